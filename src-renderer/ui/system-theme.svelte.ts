/** What the system asks for, kept up to date. */
class SystemTheme {
  #query = matchMedia('(prefers-color-scheme: dark)')
  dark = $state(this.#query.matches)

  constructor() {
    this.#query.addEventListener('change', (event) => (this.dark = event.matches))
  }

  resolve(choice: 'system' | 'light' | 'dark'): 'light' | 'dark' {
    if (choice !== 'system') return choice
    return this.dark ? 'dark' : 'light'
  }
}

export const systemTheme = new SystemTheme()
export const reducedMotion = () => matchMedia('(prefers-reduced-motion: reduce)').matches
