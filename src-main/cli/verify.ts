import * as v from 'valibot'
import { type Failed, type Verification, verifyVectors } from '@shared/physics/verify/verify'
import { type Vector, VectorFileSchema, vectorsOf } from '@shared/schema/vector'
import { type Command, CommandRefused, type Terminal } from './command'
import { models } from './models'
import { parseOptions } from './options'
import { textOf } from './read-input'

/** Runs check values through the models: what passes, what fails, what is not known. */
export const verify: Command = {
  name: 'verify',
  does: 'runs published check values through the models and says which pass',
  usage: 'potwright verify FILE… [--json]',
  async run(args, terminal) {
    const { values, positionals } = parseOptions(args, { json: { type: 'boolean' } })
    if (positionals.length === 0) throw new CommandRefused('verify takes one file of check values or more')
    const vectors: Vector[] = []
    for (const path of positionals) vectors.push(...(await readVectors(path, terminal)))
    const outcome = verifyVectors(vectors, models)
    terminal.write(values.json ? `${JSON.stringify(outcome, undefined, 2)}\n` : inWords(outcome))
    return outcome.failed.length + outcome.unknown.length === 0 ? 0 : 1
  },
}

async function readVectors(path: string, terminal: Terminal): Promise<readonly Vector[]> {
  const parsed = v.safeParse(VectorFileSchema, jsonOf(await textOf(path, terminal), path))
  if (parsed.success) return vectorsOf(parsed.output)
  const [issue] = parsed.issues
  throw new CommandRefused(
    `${path} is not a file of check values: ${issue.message}`,
    v.getDotPath(issue) ?? undefined,
  )
}

function jsonOf(text: string, path: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw new CommandRefused(`${path} is not readable as JSON`)
  }
}

function inWords({ passed, failed, unknown }: Verification): string {
  return [
    ...failed.map(failure),
    ...unknown.map(({ id, model }) => `unknown  ${id}: there is no model ${model}`),
    `${passed.length} passed, ${failed.length} failed, ${unknown.length} of unknown models`,
    '',
  ].join('\n')
}

function failure({ id, model, expected, actual, tolerance, reason }: Failed): string {
  const got = actual === undefined ? (reason ?? 'refused') : `got ${actual}`
  return `failed   ${id} (${model}): expected ${expected} ± ${tolerance}, ${got}`
}
