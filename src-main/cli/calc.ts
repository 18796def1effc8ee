import { parseJson } from '@main/storage/document-file'
import { type Command, CommandRefused } from './command'
import { models } from './models'
import { parseOptions } from './options'
import { textOf } from './read-input'

/** One model with one set of inputs. */
export const calc: Command = {
  name: 'calc',
  does: 'one model with one set of inputs; without a model, the list of them',
  usage: `potwright calc MODEL JSON [--json]\n\nJSON is the inputs in braces, or “-” for standard input.`,
  async run(args, terminal) {
    const { values, positionals } = parseOptions(args, { json: { type: 'boolean' } })
    const [name, given, extra] = positionals
    if (name === undefined) {
      const names = Object.keys(models).sort()
      terminal.write(values.json ? `${JSON.stringify(names, undefined, 2)}\n` : `${names.join('\n')}\n`)
      return 0
    }
    const model = Object.hasOwn(models, name) ? models[name] : undefined
    if (!model) throw new CommandRefused(`there is no model ${name}; “potwright calc” lists them`, 'model')
    if (given === undefined || extra !== undefined)
      throw new CommandRefused('calc takes a model and its inputs')
    const inputs = parseJson(given === '-' ? await textOf('-', terminal) : given)
    if (!inputs) throw new CommandRefused('the inputs must be JSON in braces', 'inputs')
    const value = evaluate(model, inputs)
    terminal.write(
      values.json
        ? `${JSON.stringify({ model: name, inputs, value })}\n`
        : `${Number(value.toPrecision(12))}\n`,
    )
    return 0
  },
}

function evaluate(
  model: (inputs: Record<string, unknown>) => number,
  inputs: Record<string, unknown>,
): number {
  try {
    return model(inputs)
  } catch (thrown) {
    // Models refuse inputs they cannot use this way; anything else is a bug.
    if (thrown instanceof RangeError) throw new CommandRefused(thrown.message, 'inputs')
    throw thrown
  }
}
