const steps: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowDown: (at, last) => (at === last ? 0 : at + 1),
  ArrowUp: (at, last) => (at === 0 ? last : at - 1),
  Home: () => 0,
  End: (_, last) => last,
}

/**
 * Makes the buttons of a list one stop of the Tab key, the one that had the focus last; arrows, Home and End go from one to
 * the next ('roving tabindex' of the ARIA Authoring Practices Guide).
 */
export function oneTabStop(list: HTMLElement): () => void {
  const buttons = () => [...list.querySelectorAll('button')]
  let stop: EventTarget | null = null

  function settle() {
    const all = buttons()
    const chosen = all.find((button) => button === stop) ?? all[0]
    for (const button of all) button.tabIndex = button === chosen ? 0 : -1
  }
  function onfocusin({ target }: FocusEvent) {
    stop = target
    settle()
  }
  function onkeydown(event: KeyboardEvent) {
    const all = buttons()
    const at = all.findIndex((button) => button === event.target)
    const to = at < 0 ? undefined : steps[event.key]?.(at, all.length - 1)
    if (to === undefined) return
    event.preventDefault()
    event.stopPropagation()
    all[to]!.focus()
  }

  const changes = new MutationObserver(settle)
  changes.observe(list, { childList: true, subtree: true })
  list.addEventListener('focusin', onfocusin)
  list.addEventListener('keydown', onkeydown)
  settle()
  return () => {
    changes.disconnect()
    list.removeEventListener('focusin', onfocusin)
    list.removeEventListener('keydown', onkeydown)
  }
}
