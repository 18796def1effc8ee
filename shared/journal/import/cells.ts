/** Reasons why a cell cannot be used are thrown inside one row and told with its line. */
export class CellRefused extends Error {}

/** A whole number of at least 0; empty is left out. */
export function wholeCell(text: string, what: string): number | undefined {
  if (text === '') return undefined
  const value = Number(text)
  if (!Number.isInteger(value) || value < 0) throw new CellRefused(`${what} “${text}” is not a whole number.`)
  return value
}

/** A number of at least 0, with point or comma; empty is left out. */
export function numberCell(text: string, what: string): number | undefined {
  if (text === '') return undefined
  const figure = text.replace(',', '.').replace(/[^0-9.]+$/, '')
  const value = Number(figure)
  if (figure === '' || !Number.isFinite(value) || value < 0)
    throw new CellRefused(`${what} “${text}” is not a number.`)
  return value
}

/** A day as 2026-05-01; empty is left out. */
export function dayCell(text: string, what: string): string | undefined {
  if (text === '') return undefined
  const at = new Date(`${text}T00:00:00.000Z`)
  if (!/^\d{4}-\d\d-\d\d$/.test(text) || Number.isNaN(at.getTime()) || !at.toISOString().startsWith(text))
    throw new CellRefused(`${what} “${text}” is not a day like 2026-05-01.`)
  return text
}

/** A time of day as 06:40, as minutes from midnight; empty is left out. */
export function clockCell(text: string, what: string): number | undefined {
  if (text === '') return undefined
  const [, hours, minutes] = /^(\d{1,2})[:.h](\d\d)$/.exec(text) ?? []
  if (hours === undefined || minutes === undefined || Number(hours) > 23 || Number(minutes) > 59)
    throw new CellRefused(`${what} “${text}” is not a time like 06:40.`)
  return Number(hours) * 60 + Number(minutes)
}
