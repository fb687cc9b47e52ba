import { createContext } from 'svelte'

export type Theme = 'light' | 'dark'

/** The theme of the window for its parts: asked each time, so that a change is followed. */
export const [useTheme, provideTheme] = createContext<() => Theme>()

/** Follows what the system asks for. Call it while a component is being set up. */
export function systemTheme(): { readonly theme: Theme } {
  const query = globalThis.matchMedia('(prefers-color-scheme: dark)')
  let dark = $state(query.matches)
  $effect(() => {
    const follow = () => (dark = query.matches)
    query.addEventListener('change', follow)
    return () => query.removeEventListener('change', follow)
  })
  return {
    get theme() {
      return dark ? 'dark' : 'light'
    },
  }
}
