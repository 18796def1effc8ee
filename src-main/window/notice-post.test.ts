import { expect, test, vi } from 'vitest'
import { NoticePost } from './notice-post'

test('what comes before the page listens is kept for it, in order, and told once', () => {
  const pass = vi.fn()
  const post = new NoticePost(pass)
  post.send({ kind: 'command', command: 'one' })
  post.send({ kind: 'command', command: 'two' })
  expect(pass).not.toHaveBeenCalled()
  post.deliver()
  post.send({ kind: 'command', command: 'three' })
  post.deliver()
  expect(pass.mock.calls.flat()).toEqual(
    ['one', 'two', 'three'].map((command) => ({ kind: 'command', command })),
  )
})
