/**
 * Sum of many numbers with the rounding error carried along.
 *
 * Neumaier's variant of Kahan's sum: the error stays near one unit in the last place of the largest partial sum,
 * however many terms there are.
 *
 * @param terms numbers to add, any length
 * @returns their sum; 0 for none
 * @source A. Neumaier, Z. Angew. Math. Mech. 54 (1974) 39-51
 */
export function compensatedSum(terms: Iterable<number>): number {
  let sum = 0
  let lost = 0
  for (const term of terms) {
    const next = sum + term
    lost += Math.abs(sum) >= Math.abs(term) ? sum - next + term : term - next + sum
    sum = next
  }
  return sum + lost
}
