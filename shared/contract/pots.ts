import { PotSchema } from '@shared/schema/pot'
import { documentCalls } from './document-calls'

const calls = documentCalls(PotSchema)

export const pots = {
  'pots:list': calls.list,
  'pots:get': calls.get,
  'pots:save': calls.save,
  'pots:delete': calls.delete,
  'pots:restore': calls.restore,
  'pots:import': calls.import,
  'pots:export': calls.export,
  'pots:settle': calls.settle,
}
