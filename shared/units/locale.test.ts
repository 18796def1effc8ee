import { expect, test } from 'vitest'
import { decimalMarkOf, withMark } from './locale'

// Unicode CLDR 48, number symbols of each locale ("Decimal Symbol").
test.each([
  [',', ['de-DE', 'de-AT', 'fr-FR', 'fr-CA', 'fr-CH', 'es-ES', 'es-CL', 'pt-BR', 'pt-PT', 'it-IT', 'nl-NL']],
  [',', ['da-DK', 'nb-NO', 'sv-SE', 'fi-FI', 'is-IS', 'pl-PL', 'el-GR', 'ru-RU', 'tr-TR', 'id-ID', 'en-DE']],
  ['.', ['en-US', 'en-GB', 'en-AU', 'en-CA', 'en-IE', 'de-CH', 'it-CH', 'es-MX', 'es-US', 'ja-JP', 'ko-KR']],
  // With European digits; their own digits have a mark of their own.
  ['.', ['ar-EG', 'fa-IR', 'hi-IN']],
] as const)('a decimal stands behind %j in %j', (mark, tags) => {
  for (const tag of tags) expect([tag, decimalMarkOf(tag)]).toEqual([tag, mark])
})

test('the mark is that of the platform in every locale it carries', () => {
  const letters = [...'abcdefghijklmnopqrstuvwxyz']
  const tags = letters.flatMap((a) => letters.map((b) => a + b))
  for (const tag of Intl.NumberFormat.supportedLocalesOf(tags)) {
    const written = new Intl.NumberFormat(tag, { numberingSystem: 'latn' }).format(0.5)
    expect([tag, withMark('0.5', decimalMarkOf(tag))]).toEqual([tag, written])
  }
})

test('a tag that is none is a fault of ours', () => {
  expect(() => decimalMarkOf('not a tag')).toThrow(RangeError)
})
