import { toJsonSchema, type ConversionConfig } from '@valibot/to-json-schema'
import type { GenericSchema } from 'valibot'
import { CheckSchema } from '../shared/schema/check'
import { JournalEventSchema } from '../shared/schema/journal'
import { OwnMaterialsSchema } from '../shared/schema/materials'
import { PotSchema } from '../shared/schema/pot'
import { RulePackSchema } from '../shared/schema/rule-pack'
import { TripSchema } from '../shared/schema/trip'
import { WaterSchema } from '../shared/schema/water'

/*
 * The JSON Schemas in `assets/schemas/`, made from the schemas the program itself reads with. They are for
 * editors and other programs; what only code can tell stands in a `$comment`.
 */

const documents: Readonly<Record<string, { title: string; schema: GenericSchema }>> = {
  pot: { title: 'Pot design, *.pot.json', schema: PotSchema },
  water: { title: 'Water, *.water.json', schema: WaterSchema },
  trip: { title: 'Trip, *.trip.json', schema: TripSchema },
  check: { title: 'What a check of one pot found', schema: CheckSchema },
  'rule-pack': { title: "A region's rule pack", schema: RulePackSchema },
  'journal-event': { title: 'One line of a journal', schema: JournalEventSchema },
  materials: { title: "The user's own materials, materials.json", schema: OwnMaterialsSchema },
}

const conversion: ConversionConfig = {
  target: 'draft-2020-12',
  // Surrounding spaces are cut off when read, and a JSON number is always finite.
  ignoreActions: ['trim', 'finite'],
  overrideAction: ({ valibotAction, jsonSchema }) =>
    valibotAction.type === 'check' && 'message' in valibotAction
      ? {
          ...jsonSchema,
          $comment: `Checked when read, beyond this schema: ${String(valibotAction.message)}.`,
        }
      : undefined,
}

/** Every published schema as the text of its file, by file name. */
export function jsonSchemaFiles(): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(documents).map(([name, { title, schema }]) => {
      const { $schema, ...rest } = toJsonSchema(schema, conversion)
      return [`${name}.schema.json`, `${JSON.stringify({ $schema, title, ...rest }, null, 2)}\n`]
    }),
  )
}
