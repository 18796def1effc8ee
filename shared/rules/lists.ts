import { ruleQuantities, type QuantityName } from '@shared/schema/rule-quantities'
import type { Outcome } from './outcome'
import { quantityWords } from './words'

type WordOperator = 'one-of' | 'none-of' | 'only' | 'includes' | 'mentions'

/**
 * Holds a text or a list of words against the values of a rule.
 *
 * one-of: the text is among the values. none-of: no word is. only: every word is. includes: every value is in the
 * list. mentions: every value stands as a word in one of the texts, whatever its case.
 */
export function compareWords(
  op: WordOperator,
  quantity: QuantityName,
  actual: string | readonly string[],
  values: readonly string[],
): Outcome {
  const words = typeof actual === 'string' ? [actual] : actual
  const lacking =
    op === 'mentions'
      ? values.filter((value) => !isSaid(value, words))
      : values.filter((value) => !words.includes(value))
  const extra = words.filter((word) => (op === 'none-of' ? values.includes(word) : !values.includes(word)))
  const { label, less, more } = quantityWords[quantity]
  const part = ruleQuantities[quantity].part
  const figures = {
    part,
    actual: words.map(spoken).join(', ') || 'none',
    limit: values.map(spoken).join(', '),
  }
  switch (op) {
    case 'includes':
    case 'mentions':
      return lacking.length === 0
        ? { state: 'holds', says: '', ...figures }
        : {
            state: 'fails',
            says: `Missing from ${lower(label)}: ${lacking.map(spoken).join(', ')}. ${more ?? ''}`.trim(),
            ...figures,
          }
    case 'one-of':
    case 'only':
    case 'none-of':
      return extra.length === 0
        ? { state: 'holds', says: `${label}: ${figures.actual}.`, ...figures }
        : {
            state: 'fails',
            says: `${label}: ${extra.map(spoken).join(', ')}. ${less ?? ''}`.trim(),
            ...figures,
          }
  }
}

function isSaid(value: string, texts: readonly string[]): boolean {
  const wanted = value.toLowerCase()
  return texts.some((text) =>
    text
      .toLowerCase()
      .split(/[^\p{L}\p{N}]+/u)
      .includes(wanted),
  )
}

const lower = (label: string) => `${label.charAt(0).toLowerCase()}${label.slice(1)}`

/** "last-name" as a person says it. */
const spoken = (word: string) => word.replaceAll('-', ' ')
