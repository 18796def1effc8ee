import { nettingSolidity } from '@shared/design/solidity'
import { screenRange } from '@shared/physics/netting/screen'
import { isWithin } from '@shared/physics/netting/screen-coefficient'
import { unbrokenHeight } from '@shared/physics/waves/orbital'
import type { Finding } from '@shared/schema/check'
import type { Conditions } from '@shared/tides/conditions'
import { sources } from './judging'
import type { Prepared } from './prepared'

// Drag of netting was measured up to about this speed [m/s].
const testedCurrentMps = 1

/** Where a model is used outside the range it was measured in; these warn and do not change a verdict. */
export function rangeWarnings(prepared: Prepared, conditions: Conditions): Finding[] {
  const { input, words } = prepared
  const warnings: Finding[] = []
  if (input.pot.netting) {
    const range = screenRange('aarsnes')
    const solidity = nettingSolidity(input.pot.netting, prepared.sets.middle.foulingTwineFactor)
    if (!isWithin(range, solidity))
      warnings.push({
        rule: 'range:solidity',
        state: 'holds',
        part: 'netting',
        what:
          solidity < range.least
            ? `The netting is more open (${words.bare(solidity, '1')} solid) than the nets whose drag was measured (${words.bare(range.least, '1')} to ${words.bare(range.most, '1')}).`
            : `The netting is denser (${words.bare(solidity, '1')} solid) than the nets whose drag was measured (${words.bare(range.least, '1')} to ${words.bare(range.most, '1')}).`,
        actual: solidity,
        limit: solidity < range.least ? range.least : range.most,
        margin: solidity < range.least ? solidity - range.least : range.most - solidity,
        unit: '1',
        standing: 'engineering',
        source: sources.holding,
      })
  }
  if (conditions.surfaceCurrentMps > testedCurrentMps)
    warnings.push({
      rule: 'range:current',
      state: 'holds',
      part: 'water',
      what: `Drag of netting was measured up to about ${words.with(testedCurrentMps, 'm/s')}; here it is carried further.`,
      actual: conditions.surfaceCurrentMps,
      limit: testedCurrentMps,
      margin: testedCurrentMps - conditions.surfaceCurrentMps,
      unit: 'm/s',
      standing: 'engineering',
      source: sources.holding,
    })
  return [...warnings, ...wavesCounted(prepared, conditions)]
}

/** Waves higher than the depth or their period lets them be are counted where they break; without any, none are. */
function wavesCounted({ words }: Prepared, { waves, depthHighM }: Conditions): Finding[] {
  if (!waves) return [noWaves]
  if (!(depthHighM > 0)) return []
  const highest = unbrokenHeight(waves, depthHighM)
  if (highest >= waves.heightM) return []
  return [
    {
      rule: 'range:waves',
      state: 'holds',
      part: 'water',
      what: `Waves of ${words.with(waves.heightM, 'm')} every ${words.with(waves.periodS, 's')} break here; ${words.with(highest, 'm')} is counted.`,
      actual: waves.heightM,
      limit: highest,
      margin: highest - waves.heightM,
      unit: 'm',
      standing: 'engineering',
      source: sources.waves,
    },
  ]
}

const noWaves: Finding = {
  rule: 'range:no-waves',
  state: 'holds',
  part: 'water',
  what: 'No waves are given for this water, so none are counted.',
  standing: 'engineering',
}
