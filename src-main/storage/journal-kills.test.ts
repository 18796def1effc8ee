import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { builtProgram, sourceOf } from './built-program'
import { Journal } from './journal'
import { temporaryFolder } from './temporary-folder'

const folder = temporaryFolder()
/** Each file is written to by several processes, one after the other; two files at a time. */
const files = 40
const livesPerFile = 5

/** Writes single events and heaps too large for one write, and says after each how many are acknowledged. */
const writer = `
  import { writeSync } from 'node:fs'
  import { Journal } from ${sourceOf('./journal.ts')}
  const [, , dataFolder = '', life = ''] = process.argv
  let count = 0
  const journal = new Journal({
    dataFolder, machine: 'shed', now: () => new Date(),
    newId: () => life + '-' + ++count, onWritten: () => Promise.resolve(),
  })
  const event = { kind: 'clean', pot: 'pot-7', note: 'x'.repeat(390) }
  for (let turn = 0; ; turn++) {
    const added = await journal.append(Array(turn % 3 === 1 ? 1500 : 1).fill(event))
    if (!added.ok) throw new Error(added.error.message)
    writeSync(1, count + '\\n')
  }`

test(`a process killed in the middle of its work ${files * livesPerFile} times loses no acknowledged event`, async () => {
  const program = await builtProgram(folder(), writer)
  const names = Array.from({ length: files }, (_, index) => join(folder(), `data-${index}`))
  const workThrough = async (own: readonly string[]) => {
    for (const dataFolder of own) await livesOn(program, dataFolder)
  }
  await Promise.all([workThrough(names.slice(0, files / 2)), workThrough(names.slice(files / 2))])
})

/** Several lives on one file; after each death all that was ever acknowledged must be there. */
async function livesOn(program: string, dataFolder: string): Promise<void> {
  await mkdir(dataFolder)
  const acknowledged: string[] = []
  for (let life = 0; life < livesPerFile; life++) {
    const count = await liveAndDie(program, dataFolder, `life${life}`, (life * 7) % 19)
    for (let event = 1; event <= count; event++) acknowledged.push(`life${life}-${event}`)
    const { events, problems } = await journalIn(dataFolder).load()
    const kept = new Set(events.map(({ id }) => id))
    expect({ life, count: count > 0, lost: acknowledged.filter((id) => !kept.has(id)), problems }).toEqual({
      ...{ life, count: true, lost: [], problems: [] },
    })
    expect(new Set(events.map(({ seq }) => seq)).size).toBe(events.length)
  }
}

/** Starts a writer, kills it a few milliseconds after its first word, and tells how many events it had acknowledged. */
async function liveAndDie(program: string, dataFolder: string, life: string, afterMs: number) {
  const child = spawn(process.execPath, [program, dataFolder, life], { stdio: ['ignore', 'pipe', 'inherit'] })
  let said = ''
  child.stdout.setEncoding('utf8').on('data', (part: string) => (said += part))
  await once(child.stdout, 'data')
  await pause(afterMs)
  child.kill('SIGKILL')
  await once(child, 'close')
  return Number(said.slice(0, said.lastIndexOf('\n')).split('\n').at(-1))
}

function journalIn(dataFolder: string): Journal {
  return new Journal({
    ...{ dataFolder, machine: 'shed', now: () => new Date() },
    ...{ newId: () => 'unused', onWritten: () => Promise.resolve() },
  })
}
