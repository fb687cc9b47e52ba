const keptAs = 'bedplate-token'

/**
 * The launch token from the address fragment. It is taken off the address at once, so that it is in no history and no
 * picture of the screen, and kept for this tab alone, so that a reload works.
 */
export function takeToken(): string {
  const handed = location.hash.slice(1)
  if (handed) {
    sessionStorage.setItem(keptAs, handed)
    history.replaceState(null, '', location.pathname)
  }
  return handed || (sessionStorage.getItem(keptAs) ?? '')
}
