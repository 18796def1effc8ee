import { expect, test } from 'vitest'
import { usualPaper } from './paper'

test.each([
  [['en-US'], 'letter'],
  [['en_US.UTF-8'], 'letter'],
  [['es-419', 'es-MX'], 'letter'],
  [['en-AU', 'en-US'], 'a4'],
  [['de'], 'a4'],
  [['C'], 'a4'],
  [[], 'a4'],
])('a reader of %j has %s', (languages, paper) => {
  expect(usualPaper(languages)).toBe(paper)
})
