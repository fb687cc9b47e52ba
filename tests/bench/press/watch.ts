declare global {
  /** How long each press took, in ms, in the page. */
  var pressTimes: number[]
}

/** What the page is given: it notes how long each press of Enter takes until the next fastener is on the screen, in ms. */
export function watchPresses(): void {
  globalThis.pressTimes = []
  let pressedAt = 0
  const next = (): string => document.querySelector('.next .disc')?.textContent ?? ''
  let shown = next()
  addEventListener(
    'keydown',
    (event) => {
      if (event.key === 'Enter') pressedAt = event.timeStamp
    },
    true,
  )
  const afterFrame = new MessageChannel()
  afterFrame.port1.onmessage = () => {
    // Reading a pixel back waits until all that was drawn before it is there.
    for (const canvas of document.querySelectorAll('canvas'))
      canvas.getContext('2d')?.getImageData(0, 0, 1, 1)
    pressTimes.push(performance.now() - pressedAt)
  }
  new MutationObserver(() => {
    if (next() === shown) return
    shown = next()
    requestAnimationFrame(() => afterFrame.port2.postMessage(null))
  }).observe(document.body, { subtree: true, childList: true, characterData: true })
}
