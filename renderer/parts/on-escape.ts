/** For `svelte:window`: Escape leaves what is open, unless something that lies over it has taken the key. */
export function onEscape(leave: () => void): (event: KeyboardEvent) => void {
  return (event) => {
    if (event.key !== 'Escape' || event.defaultPrevented) return
    event.preventDefault()
    leave()
  }
}
