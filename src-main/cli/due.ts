import { existsSync } from 'node:fs'
import { LockerBook } from '@main/services/locker-book'
import { seasonOf, type SeasonSources, usualAheadMonths } from '@main/services/season-tables'
import { homeFolder } from '@main/storage/home'
import { Journal } from '@main/storage/journal'
import { readSettings } from '@main/storage/read-settings'
import { readPots, readWaters } from '@main/storage/read-saved'
import { coefficientsWith } from '@shared/physics/coefficients'
import { calendarDay } from '@shared/schema/fields'
import { onBudget } from '@shared/season/budget'
import { planCost } from '@shared/season/plan-cost'
import { shoppingList } from '@shared/season/shopping'
import * as v from 'valibot'
import { type Command, CommandRefused, type Terminal } from './command'
import { dueJson, dueText } from './due-text'
import { wholeFrom } from './option-values'
import { parseOptions } from './options'
import { dataFolderOf, materialsFor, packsFor } from './user-data'

/** Parts to inspect or replace, and the shopping list. It reads the data folder and changes nothing in it. */
export const due: Command = {
  name: 'due',
  does: 'parts to inspect or replace, and the shopping list',
  usage: 'potwright due [--data DIR] [--on DATE] [--months N] [--budget MONEY] [--json]',
  async run(args, terminal) {
    const { values, positionals } = parseOptions(args, {
      data: { type: 'string' },
      on: { type: 'string' },
      months: { type: 'string' },
      budget: { type: 'string' },
      json: { type: 'boolean' },
    })
    if (positionals.length > 0) throw new CommandRefused(`due takes no ${positionals[0] ?? ''}`)
    const home = homeFolder(terminal.env, terminal.platform)
    const dataFolder = await dataFolderOf(terminal, values.data)
    if (!existsSync(dataFolder)) throw new CommandRefused(`there is no data folder ${dataFolder}`, 'data')
    const nowMs = momentFrom(values.on, terminal)
    const now = () => new Date(nowMs)
    const { book, trouble } = await new LockerBook(journalOf(dataFolder, now), now).open()
    const aheadMonths = wholeFrom(values.months, 'months', 1, 24, usualAheadMonths)
    const season = await seasonOf(book, await sourcesIn(home, dataFolder, terminal, now), nowMs, aheadMonths)
    const budget = budgetFrom(values.budget)
    const changed = season.due.flatMap((item) =>
      item.action === 'replace' && item.report ? [item.report] : [],
    )
    const found = {
      on: now().toISOString().slice(0, 10),
      season,
      shopping: shoppingList(season.due, book.state),
      cost: planCost(changed, season.reports, book.state, season.context),
      ...(budget === undefined ? {} : { plan: onBudget(season.due, budget, book.state, season.context) }),
      missing: book.state.missing.map((id) => book.state.pots[id]?.number ?? id),
      problems: book.state.problems,
    }
    for (const line of trouble) terminal.writeError(`${line}\n`)
    terminal.write(values.json ? `${JSON.stringify(dueJson(found), undefined, 2)}\n` : dueText(found))
    return season.due.length === 0 && found.missing.length === 0 && trouble.length === 0 ? 0 : 1
  },
}

/** What stands in the data folder beside the journal. */
async function sourcesIn(
  home: string,
  dataFolder: string,
  terminal: Terminal,
  now: () => Date,
): Promise<SeasonSources> {
  const { assumptions = {}, coefficients = {}, trip } = await readSettings(home, dataFolder)
  return {
    now,
    overrides: () => assumptions,
    around: async () => {
      const packs = await packsFor(terminal, dataFolder)
      return {
        designs: await readPots(dataFolder),
        waters: await readWaters(dataFolder),
        trip,
        rules: (region) => packs.find((one) => one.region === region)?.pack,
        materials: await materialsFor(terminal, dataFolder),
        coefficients: coefficientsWith(coefficients),
      }
    },
  }
}

function momentFrom(on: string | undefined, terminal: Terminal): number {
  if (on === undefined) return terminal.now().getTime()
  if (!v.is(calendarDay, on)) throw new CommandRefused(`“${on}” is not a date like 2026-12-05`, 'on')
  // The end of the day, so that what happened on it counts.
  return Date.parse(`${on}T23:59:59.000Z`)
}

function budgetFrom(text: string | undefined): number | undefined {
  if (text === undefined) return undefined
  const budget = Number(text)
  if (!(budget >= 0) || !Number.isFinite(budget))
    throw new CommandRefused('the budget must be a sum of at least 0', 'budget')
  return budget
}

/** The journal for reading: nothing here appends to it. */
function journalOf(dataFolder: string, now: () => Date): Journal {
  const newId = () => {
    throw new Error('due writes nothing')
  }
  return new Journal({ dataFolder, machine: 'due', now, newId, onWritten: () => Promise.resolve() })
}
