import { coefficientKeys, defaultCoefficients, type Coefficient } from '@shared/physics/coefficients'

const spread = ({ low, high }: Coefficient) => (low > 0 ? high / low : Number.POSITIVE_INFINITY)

/** Coefficients that nobody measured for this use, the widest spread first. */
export const weakFigures: readonly Coefficient[] = coefficientKeys
  .map((key) => defaultCoefficients[key])
  .filter(({ standing }) => standing === 'judgement' || standing === 'memory')
  .toSorted((a, b) => spread(b) - spread(a))
