import { afterEach, beforeEach, expect, test } from 'vitest'
import { Route } from './route.svelte'

const before = location.href
const visit = (hash: string) => history.replaceState(null, '', hash)

beforeEach(() => visit('#/bench'))
afterEach(() => history.replaceState(null, '', before))

test('opens on what the address names, and writes down where it goes', () => {
  visit('#/waters/the%20sound')
  const route = new Route()
  expect([route.place, route.detail]).toEqual(['waters', 'the sound'])
  route.go('locker', 'pot 7/8')
  expect(location.hash).toBe('#/locker/pot%207%2F8')
  expect(new Route().detail).toBe('pot 7/8')
  route.print('build', { pot: 'x' })
  expect(new Route().sheet).toEqual({ id: 'build', params: { pot: 'x' } })
})

test.each(['#/waters/%E0', '#/nowhere', '#content', '#print/nothing'])(
  'at the start %s is as good as no address',
  (hash) => {
    visit(hash)
    const route = new Route()
    expect([route.place, route.detail, route.sheet]).toEqual(['bench', '', undefined])
    expect(location.hash).toBe('')
  },
)

test.each(['#/waters/%E0', '#/nowhere', '#content'])('later %s leaves open what is open', (hash) => {
  const route = new Route()
  route.go('rulebook', 'US-WA')
  visit(hash)
  route.follow()
  expect([route.place, route.detail]).toEqual(['rulebook', 'US-WA'])
  expect(location.hash).toBe('#/rulebook/US-WA')
  route.print('gauge')
  visit(hash)
  route.follow()
  expect(route.sheet?.id).toBe('gauge')
})
