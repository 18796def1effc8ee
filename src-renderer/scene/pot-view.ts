const painted = () => new Promise<void>((done) => requestAnimationFrame(() => setTimeout(done)))

/** The view of a pot, once the page around it stands: no other part of a page has so much to fetch and to work out. */
export async function potView() {
  await painted()
  return import('./PotView.svelte')
}
