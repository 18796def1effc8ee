import type { ModelRegistry, Vector } from '@shared/schema/vector'

/** A vector that did not come out. */
export interface Failed {
  readonly id: string
  readonly model: string
  readonly expected: number
  /** What the model gave; left out where it refused the inputs. */
  readonly actual?: number
  readonly tolerance: number
  /** Why the model refused. */
  readonly reason?: string
}

export interface Verification {
  readonly passed: readonly string[]
  readonly failed: readonly Failed[]
  /** Vectors whose model is not known. */
  readonly unknown: readonly { readonly id: string; readonly model: string }[]
}

/**
 * Runs vectors through the models they name.
 *
 * A vector passes when |actual - expected| is at most its tolerance, rounding in the last place of the expected number
 * aside; what is not a number never passes.
 *
 * @param vectors  vectors of any topics
 * @param registry models by key
 * @returns ids that passed, vectors that failed with what came out, and vectors of unknown models
 */
export function verifyVectors(vectors: readonly Vector[], registry: ModelRegistry): Verification {
  const passed: string[] = []
  const failed: Failed[] = []
  const unknown: { id: string; model: string }[] = []
  for (const vector of vectors) {
    const { id, model, expected, tolerance } = vector
    const run = Object.hasOwn(registry, model) ? registry[model] : undefined
    if (!run) {
      unknown.push({ id, model })
      continue
    }
    const outcome = attempt(() => run(vector.inputs))
    const rounding = 4 * Number.EPSILON * Math.abs(expected)
    if ('actual' in outcome && Math.abs(outcome.actual - expected) <= tolerance + rounding) passed.push(id)
    else failed.push({ id, model, expected, tolerance, ...outcome })
  }
  return { passed, failed, unknown }
}

function attempt(run: () => number): { actual: number } | { reason: string } {
  try {
    return { actual: run() }
  } catch (error) {
    if (error instanceof RangeError) return { reason: error.message }
    throw error
  }
}
