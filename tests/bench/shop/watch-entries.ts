declare global {
  /** When each entry of the build was on the screen, by its number, in ms since 1970. */
  var paintedAt: Record<string, number>
}

/** What the page is given: it notes when each entry of the open build is painted. */
export function watchEntries(): void {
  globalThis.paintedAt = {}
  const last = (): string => document.querySelector('[data-entries]')?.getAttribute('data-entries') ?? ''
  let shown = last()
  const afterFrame = new MessageChannel()
  afterFrame.port1.onmessage = ({ data }) => {
    // Reading a pixel back waits until all that was drawn before it is there.
    for (const canvas of document.querySelectorAll('canvas'))
      canvas.getContext('2d')?.getImageData(0, 0, 1, 1)
    paintedAt[String(data)] = performance.timeOrigin + performance.now()
  }
  new MutationObserver(() => {
    if (last() === shown) return
    const now = (shown = last())
    requestAnimationFrame(() => afterFrame.port2.postMessage(now))
  }).observe(document.body, { subtree: true, childList: true, attributes: true })
}
