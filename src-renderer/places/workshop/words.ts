/** Words of the Workshop. */
export const sheetIds = ['figures', 'materials', 'sources', 'backup', 'about'] as const
type SheetId = (typeof sheetIds)[number]

export const workshopWords = {
  tabs: 'Sheets of the workshop',
  names: {
    figures: 'Figures',
    materials: 'Materials and prices',
    sources: 'What this rests on',
    backup: 'Backup and moving',
    about: 'About',
  } satisfies Record<SheetId, string>,
} as const
