declare global {
  /** How long each edit took until it was painted, in ms, in the page. */
  var editTimes: number[]
}

/**
 * What the page is given: it notes how long each press of an arrow key takes until the place of what is chosen stands in its field, the
 * audit has spoken and the drawing is on the screen, in ms.
 */
export function watchEdits(): void {
  globalThis.editTimes = []
  let pressedAt = 0
  const along = (): string => document.querySelector<HTMLInputElement>('.action .row input')?.value ?? ''
  let shown = along()
  const afterFrame = new MessageChannel()
  afterFrame.port1.onmessage = () => {
    // Reading a pixel back waits until all that was drawn before it is there.
    for (const canvas of document.querySelectorAll('canvas'))
      canvas.getContext('2d')?.getImageData(0, 0, 1, 1)
    editTimes.push(performance.now() - pressedAt)
  }
  function look() {
    if (along() === shown) {
      requestAnimationFrame(look)
      return
    }
    shown = along()
    afterFrame.port2.postMessage(null)
  }
  addEventListener(
    'keydown',
    (event) => {
      if (!event.key.startsWith('Arrow')) return
      pressedAt = event.timeStamp
      requestAnimationFrame(look)
    },
    true,
  )
}
