import type { Pot } from '@shared/schema/pot'
import { proposeWords as w } from '../words'

type Say = (value: number, unit: string) => string

/** The chosen parts in words, a line each. */
export function potFacts(pot: Pot, say: Say): { label: string; text: string }[] {
  const { facts } = w
  const bar = pot.frame?.find(({ role }) => role === 'base-ring')?.barDiameterMm
  const { netting, rope, float, release, bait } = pot
  return [
    { label: facts.ring, text: bar === undefined ? undefined : say(bar, 'mm') },
    { label: facts.mesh, text: netting && say(netting.barLengthMm, 'mm') },
    {
      label: facts.rope,
      text: rope && `${rope.material} ${say(rope.diameterMm, 'mm')}, ${say(rope.lengthM, 'm')}`,
    },
    {
      label: facts.float,
      text: float && `${say(float.diameterMm, 'mm')}, ${(float.colours ?? []).join(' and ')}`,
    },
    { label: facts.gaps, text: gapsText(pot, say) },
    {
      label: facts.release,
      text:
        release?.kind === 'none'
          ? w.none
          : release && `${release.material} ${say(release.diameterMm ?? 0, 'mm')}`,
    },
    { label: facts.bait, text: bait && `${say(bait.massKg, 'kg')}, ${bait.holder.replaceAll('-', ' ')}` },
  ].flatMap(({ label, text }) => (text === undefined ? [] : [{ label, text }]))
}

function gapsText({ escapeGaps = [] }: Pot, say: Say): string {
  if (escapeGaps.length === 0) return w.none
  return escapeGaps
    .map((gap) => {
      const size =
        gap.shape === 'circle'
          ? say(gap.diameterMm, 'mm')
          : `${say(gap.widthMm, 'mm')} × ${say(gap.heightMm, 'mm')}`
      return `${gap.count} of ${size}`
    })
    .join(', ')
}
