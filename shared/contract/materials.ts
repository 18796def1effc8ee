import { OwnMaterialsSchema } from '@shared/schema/materials'
import { call, nothing } from './call'

/** The user's own materials and prices; the shipped tables are part of the program. */
export const materials = {
  'materials:get': call(nothing, OwnMaterialsSchema),
  'materials:save': call(OwnMaterialsSchema, OwnMaterialsSchema),
}
