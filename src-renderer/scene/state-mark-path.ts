/** The mark of a state that fails, an open ring with a gap, drawn in a 24-unit square as on the cards. */
export const failsMark = { path: 'M16.5 3.6a9.5 9.5 0 1 1-9 0', width: 4, box: 24 } as const
