/**
 * A figure of a table that grows with the square of the diameter, read between its rows.
 *
 * y = y₁ (d/d₁)ⁿ with n from the two rows that enclose d; beyond the ends n = 2. Exact at the rows.
 *
 * @param rows     rows with their diameter, any order; empty gives undefined
 * @param diameter wanted diameter, same unit as the rows, > 0
 * @param figure   the figure of a row, > 0
 * @returns the figure at that diameter, or undefined without rows
 * @source mass and strength of rope and bar go with the cross-section
 */
export function betweenRows<Row extends { diameterMm: number; own?: true | undefined }>(
  rows: readonly Row[],
  diameter: number,
  figure: (row: Row) => number,
): number | undefined {
  let below: Row | undefined
  let above: Row | undefined
  for (const row of rows) {
    // A user's own row at the same diameter comes first.
    if (row.diameterMm <= diameter && closer(row, below, 1)) below = row
    if (row.diameterMm >= diameter && closer(row, above, -1)) above = row
  }
  if (below && above && below.diameterMm < above.diameterMm) {
    const power = Math.log(figure(above) / figure(below)) / Math.log(above.diameterMm / below.diameterMm)
    return figure(below) * (diameter / below.diameterMm) ** power
  }
  const nearest = below ?? above
  return nearest && figure(nearest) * (diameter / nearest.diameterMm) ** 2
}

function closer<Row extends { diameterMm: number; own?: true | undefined }>(
  row: Row,
  held: Row | undefined,
  sign: 1 | -1,
): boolean {
  if (!held) return true
  const gain = sign * (row.diameterMm - held.diameterMm)
  return gain > 0 || (gain === 0 && row.own === true)
}
