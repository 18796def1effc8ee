import type { Marks } from '@shared/schema/pot'
import { known, missing, stated, type Reader } from '../facts'

type Label = 'float' | 'tag' | 'ropeTag'

/** A pot whose marks are stated but which lists no such label has none; without marks nothing is known. */
const fields =
  (label: Label): Reader =>
  ({ pot }) =>
    pot.marks ? known(pot.marks[label]?.fields ?? []) : missing('the marking')

const text =
  (label: Label): Reader =>
  ({ pot }) =>
    pot.marks ? known(pot.marks[label]?.text ?? []) : missing('the marking')

const everywhere = (marks: Marks) => [
  ...(marks.float?.fields ?? []),
  ...(marks.tag?.fields ?? []),
  ...(marks.ropeTag?.fields ?? []),
]

export const marksReaders = {
  'marks.float': fields('float'),
  'marks.tag': fields('tag'),
  'marks.rope-tag': fields('ropeTag'),
  'marks.anywhere': ({ pot }) => (pot.marks ? known(everywhere(pot.marks)) : missing('the marking')),
  'marks.float-text': text('float'),
  'marks.tag-text': text('tag'),
  'marks.letter-height': ({ pot }) => stated(pot.marks?.letterHeightMm, 'the height of the letters'),
  'marks.contrasting': ({ pot }) =>
    stated(pot.marks?.contrasting, 'whether the letters stand out from their ground'),
} satisfies Record<string, Reader>
