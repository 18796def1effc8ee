import { expect, test } from 'vitest'
import { samplePot } from '@main/storage/sample-pots'
import { servicesInTests } from './services-in-tests'

/* A machine whose clock ran a year ahead and was then put right. */

const { services } = servicesInTests()
const openAt = async (now: string) => (await services('shed', { now: () => new Date(now) })).handlers

const ahead = '2027-12-05T10:00:00Z'
const right = '2026-12-05T10:00:00Z'

test('what is saved after it was put right comes after what was saved before', async () => {
  const before = await openAt(ahead)
  const first = await before['pots:save']({ document: samplePot('a', { name: 'Saved ahead of time' }) })
  if (!first.ok) throw new Error(first.error.message)
  const after = await openAt(right)
  const second = await after['pots:save']({
    document: samplePot('a', { name: 'Saved later' }),
    revision: first.value.revision,
  })
  expect(second).toMatchObject({ ok: true })
  expect(await after['pots:list']({})).toMatchObject({
    ok: true,
    value: { items: [{ document: { name: 'Saved later' } }], problems: [] },
  })
})

test('a day gets its backup though a later one is there, and the later one stays', async () => {
  const before = await openAt(ahead)
  await before['pots:save']({ document: samplePot('a') })
  await before['backup:create']({})
  const after = await openAt(right)
  await after['backup:create']({})
  const kept = await after['backup:list']({})
  if (!kept.ok) throw new Error(kept.error.message)
  expect(kept.value.map(({ writtenAt }) => writtenAt.slice(0, 10)).sort()).toEqual([
    '2026-12-05',
    '2027-12-05',
  ])
})
