declare global {
  /** How long each edit took until it was painted, in ms, in the page. */
  var editTimes: number[]
  /** Resolves with the next one. */
  var editPainted: () => Promise<void>
}

/**
 * What the page is given: it notes how long each press of an arrow key takes until the place of what is chosen stands in its field, the
 * audit has spoken and the drawing is on the screen, in ms. It waits for the canvas to be cleared for the new drawing: to look at every
 * frame would make the page produce frames that nobody needs, and slow down what is measured.
 */
export function watchEdits(): void {
  globalThis.editTimes = []
  let pressedAt = 0
  let painted: () => void = () => undefined
  globalThis.editPainted = () => new Promise((resolve) => (painted = resolve))
  const along = (): string => document.querySelector<HTMLInputElement>('.action .row input')?.value ?? ''
  let shown = along()
  const afterFrame = new MessageChannel()
  afterFrame.port1.onmessage = () => {
    // Reading a pixel back waits until all that was drawn before it is there.
    for (const canvas of document.querySelectorAll('canvas'))
      canvas.getContext('2d')?.getImageData(0, 0, 1, 1)
    editTimes.push(performance.now() - pressedAt)
    painted()
  }
  type Clear = (this: CanvasRenderingContext2D, ...area: number[]) => void
  const canvas = CanvasRenderingContext2D.prototype as { clearRect: Clear }
  const clear = canvas.clearRect
  canvas.clearRect = function (...area) {
    clear.call(this, ...area)
    if (along() === shown) return
    shown = along()
    afterFrame.port2.postMessage(null)
  }
  addEventListener(
    'keydown',
    (event) => {
      if (event.key.startsWith('Arrow')) pressedAt = event.timeStamp
    },
    true,
  )
}
