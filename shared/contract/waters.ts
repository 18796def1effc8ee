import { WaterSchema } from '@shared/schema/water'
import { documentCalls } from './document-calls'

const calls = documentCalls(WaterSchema)

export const waters = {
  'waters:list': calls.list,
  'waters:get': calls.get,
  'waters:save': calls.save,
  'waters:delete': calls.delete,
  'waters:restore': calls.restore,
  'waters:import': calls.import,
  'waters:export': calls.export,
  'waters:settle': calls.settle,
}
