import * as v from 'valibot'
import baitHolders from '@assets/materials/bait-holders.json'
import bars from '@assets/materials/bars.json'
import cords from '@assets/materials/cords.json'
import floats from '@assets/materials/floats.json'
import ropes from '@assets/materials/ropes.json'
import solids from '@assets/materials/solids.json'
import twines from '@assets/materials/twines.json'
import { MaterialsSchema, type Materials, type OwnMaterials } from '@shared/schema/materials'

/** The tables that ship with Potwright. There are no built-in prices: they are the user's own. */
export const builtInMaterials: Materials = v.parse(MaterialsSchema, {
  solids,
  bars,
  ropes,
  twines,
  floats,
  cords,
  baitHolders,
  prices: [],
})

/**
 * The built-in tables with the user's rows put over them: a row with a known id replaces it, any other is added.
 * Every row taken from the user is marked as theirs.
 *
 * @param own the user's additions
 * @returns one bundle; the built-in tables stay as they are
 */
export function withOwnMaterials(own: OwnMaterials): Materials {
  return {
    solids: merged(builtInMaterials.solids, own.solids),
    bars: merged(builtInMaterials.bars, own.bars),
    ropes: merged(builtInMaterials.ropes, own.ropes),
    twines: merged(builtInMaterials.twines, own.twines),
    floats: merged(builtInMaterials.floats, own.floats),
    cords: merged(builtInMaterials.cords, own.cords),
    baitHolders: merged(builtInMaterials.baitHolders, own.baitHolders),
    prices: own.prices ?? [],
  }
}

function merged<Row extends { id: string; own?: true | undefined }>(
  builtIn: Row[],
  own: Row[] | undefined,
): Row[] {
  if (!own) return builtIn
  const byId = new Map(builtIn.map((row) => [row.id, row]))
  for (const row of own) byId.set(row.id, { ...row, own: true })
  return [...byId.values()]
}
