import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import ts from 'typescript'
import { fishingAssumptions } from '../shared/fishing/assumptions'
import { coefficientKeys, defaultCoefficients } from '../shared/physics/coefficients'
import { wearAssumptions } from '../shared/wear/assumptions'

/*
 * What the program computes, written from the code itself: the models with a source from their own comments, the
 * figures from their sheets, the checks from the published values. `npm run docs` writes it.
 */

/** A model as its comment tells it. */
interface Model {
  readonly name: string
  readonly does: string
  readonly equation?: string
  readonly range: readonly string[]
  readonly source: string
  readonly file: string
}

interface ModelGroup {
  readonly title: string
  readonly models: readonly Model[]
}

interface CheckValue {
  readonly model: string
  readonly source: string
  readonly tolerance: number
}

const groups: Readonly<Record<string, string>> = {
  'shared/physics': 'Water, ropes, holding and lifting',
  'shared/tides': 'Tides and streams',
  'shared/design': 'The pot and its parts',
  'shared/fishing': 'How a pot fishes',
  'shared/wear': 'How gear wears',
  'shared/season': 'The season',
  'shared/rules': 'Rules',
}

/** Both documents by file name: one to read, one for the page of sources. */
export function modelDocs(root: string): ReadonlyMap<string, string> {
  const found = Object.entries(groups).map(([folder, title]) => ({
    title,
    models: modelsUnder(root, folder),
  }))
  return new Map([
    ['models.md', markdown(found, checkValues(root))],
    ['models.json', `${JSON.stringify(found.map(forThePage), null, 2)}\n`],
  ])
}

const forThePage = ({ title, models }: ModelGroup) => ({
  title,
  models: models.map(({ does, source }) => ({ does, source })),
})

function modelsUnder(root: string, folder: string): Model[] {
  const files = readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && !name.endsWith('.d.ts'))
    .toSorted()
  return files.flatMap((name) => modelsOf(root, join(root, folder, name)))
}

function modelsOf(root: string, path: string): Model[] {
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true)
  return file.statements.flatMap((statement) => {
    const docs = ts.getJSDocCommentsAndTags(statement).filter(ts.isJSDoc)
    const doc = docs[docs.length - 1]
    const source = doc?.tags?.find((tag) => tag.tagName.text === 'source')
    if (!doc || !source) return []
    const [does = '', ...more] = plain(doc.comment).split(/\n\s*\n/)
    const equation = more.find((paragraph) => /[=≥≤]/.test(paragraph))
    return [
      {
        name: nameOf(statement),
        does: oneLine(does),
        ...(equation === undefined ? {} : { equation: oneLine(equation) }),
        range: (doc.tags ?? [])
          .flatMap((tag) => (ts.isJSDocParameterTag(tag) ? [parameter(tag)] : []))
          .filter((text) => text !== ''),
        source: oneLine(plain(source.comment)),
        file: relative(root, path).replaceAll('\\', '/'),
      },
    ]
  })
}

const plain = (comment: ReturnType<typeof ts.getTextOfJSDocComment> | ts.JSDoc['comment']) =>
  (typeof comment === 'string' ? comment : ts.getTextOfJSDocComment(comment)) ?? ''
const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim()

function nameOf(statement: ts.Statement): string {
  if (ts.isFunctionDeclaration(statement)) return statement.name?.text ?? ''
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations[0]?.name.getText() ?? ''
  return ''
}

/** A parameter that has a unit or a bound, as `depth: [m], > 0`. */
function parameter(tag: ts.JSDocParameterTag): string {
  const text = oneLine(plain(tag.comment))
  return /\[|[<>≤≥…]/.test(text) ? `${tag.name.getText()}: ${text}` : ''
}

function checkValues(root: string): CheckValue[] {
  return ['check-values.json', 'fishing-and-wear-values.json'].flatMap(
    (name) => JSON.parse(readFileSync(join(root, 'tests/reference', name), 'utf8')) as CheckValue[],
  )
}

function markdown(found: readonly ModelGroup[], values: readonly CheckValue[]): string {
  return [
    '# What Potwright computes, and what it rests on',
    'Written from the code by `npm run docs`; a test holds it to the code. Units are SI unless said.',
    '## What is weak',
    weak(),
    ...found.flatMap(({ title, models }) => [`## ${title}`, ...models.map(model)]),
    '## Checks against published values',
    checks(values),
    '## Figures that can be changed',
    '### Coefficients',
    coefficients(),
    '### Fishing',
    assumptions(fishingAssumptions),
    '### Wear',
    assumptions(wearAssumptions),
  ]
    .join('\n\n')
    .concat('\n')
}

function model({ name, does, equation, range, source, file }: Model): string {
  return [
    `**${name}** (\`${file}\`): ${does}`,
    ...(equation === undefined ? [] : [`- Equation: ${equation}`]),
    ...(range.length === 0 ? [] : [`- Takes: ${range.join('; ')}`]),
    `- Source: ${source}`,
  ].join('\n')
}

/** Figures that nobody measured for this use, the widest spread first. */
function weak(): string {
  const rows = coefficientKeys
    .map((key) => defaultCoefficients[key])
    .filter(({ standing }) => standing === 'judgement' || standing === 'memory')
    .map((row) => ({ ...row, spread: row.low > 0 ? row.high / row.low : Number.POSITIVE_INFINITY }))
    .toSorted((a, b) => b.spread - a.spread || (a.label < b.label ? -1 : 1))
  const assumed = [...Object.values(fishingAssumptions), ...Object.values(wearAssumptions)].filter(
    ({ standing }) => standing === 'assumed',
  )
  return [
    'Coefficients that rest on judgement or memory, the widest spread first. A verdict that turns on one of these is *close* or *fails* with the cautious value.',
    table(
      ['Figure', 'Low', 'Likely', 'High', 'Times'],
      rows.map(({ label, low, mid, high, spread }) => [
        label,
        String(low),
        String(mid),
        String(high),
        Number.isFinite(spread) ? spread.toFixed(1) : 'from nothing',
      ]),
    ),
    `Besides these, ${assumed.length} figures of the fishing and wear models were found in no source and are marked *assumed* below. Growth on netting, suction of mud and snagging on rock are the least known of all.`,
  ].join('\n\n')
}

function checks(values: readonly CheckValue[]): string {
  const byModel = new Map<string, CheckValue[]>()
  for (const value of values) byModel.set(value.model, [...(byModel.get(value.model) ?? []), value])
  return table(
    ['Model', 'Values', 'Widest tolerance', 'From'],
    [...byModel]
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, all]) => [
        `\`${name}\``,
        String(all.length),
        String(Math.max(...all.map((one) => one.tolerance))),
        [...new Set(all.map((one) => one.source))].join('; '),
      ]),
  )
}

const coefficients = () =>
  table(
    ['Figure', 'Unit', 'Low', 'Likely', 'High', 'May be', 'Cautious', 'How sure', 'Source'],
    coefficientKeys.map((key) => {
      const row = defaultCoefficients[key]
      return [
        ...[row.label, row.unit, String(row.low), String(row.mid), String(row.high)],
        ...[row.range.join(' to '), row.cautious, row.standing, row.source],
      ]
    }),
  )

const assumptions = (sheet: typeof fishingAssumptions | typeof wearAssumptions) =>
  table(
    ['Figure', 'Unit', 'Value', 'Spread', 'How sure', 'Source'],
    Object.values(sheet).map((row) => [
      ...[row.label, row.unit, String(row.value), `${row.low} to ${row.high}`, row.standing, row.source],
    ]),
  )

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')
}
