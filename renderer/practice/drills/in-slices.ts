import type { InParts } from '../../../core/joint/index.ts'

/** The longest that a slice takes, but for its last part: less than a frame at 60 Hz, so that the page answers meanwhile. */
const sliceMs = 8

/** Goes through a calculation a slice at a time, and hands over its result; the function given back cancels it. */
export function inSlices<Result>(parts: InParts<Result>, ondone: (result: Result) => void): () => void {
  const goOn = () => {
    const untilMs = performance.now() + sliceMs
    do {
      const part = parts.next()
      if (part.done === true) return ondone(part.value)
    } while (performance.now() < untilMs)
    next = setTimeout(goOn)
  }
  let next = setTimeout(goOn)
  return () => clearTimeout(next)
}
