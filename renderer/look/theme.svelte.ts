export type Theme = 'light' | 'dark'

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
