/**
 * Keeps the focus in a part of the page whose fields come and go: where the field that has it is taken away or can do nothing more, the
 * Tab key goes on from this part, not from the top of the page.
 */
export function keepFocus(part: HTMLElement): () => void {
  let last: EventTarget | null = null
  const remember = ({ target }: FocusEvent) => (last = target)
  const changes = new MutationObserver(() => {
    if (!(last instanceof HTMLElement) || document.activeElement !== document.body) return
    if (last.isConnected && !last.matches(':disabled')) return
    last = null
    part.tabIndex = -1
    part.focus({ preventScroll: true })
  })
  changes.observe(part, { childList: true, subtree: true, attributeFilter: ['disabled'] })
  part.addEventListener('focusin', remember)
  return () => {
    changes.disconnect()
    part.removeEventListener('focusin', remember)
  }
}
