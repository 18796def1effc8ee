/** Tells this tab from others that are open on the same data. */
export const pageId = crypto.randomUUID()
