import { describe, expect, it } from 'vitest'
import { en } from '../../../core/words/index.ts'
import { windowLines } from '../../../renderer/record/window-lines.ts'
import type { WindowState } from '../../../renderer/record/window-lines.ts'

const seen: WindowState = {
  missingWeights: [],
  widthPx: 1366,
  heightPx: 768,
  scale: 1.25,
  reader: { distance: 2, pxPerMm: 3.779 },
  measured: true,
}
const linesOf = (change: Partial<WindowState> = {}) =>
  windowLines(en, { ...seen, ...change }).map(
    ({ subject, state, sentence }) => `${subject} ${state}: ${sentence}`,
  )

describe('what the window says of itself', () => {
  it('is its type, its screen and how that is read, and that it does not speak', () => {
    expect(linesOf()).toEqual([
      'fonts good: Atkinson Hyperlegible Next is loaded, plain and bold.',
      'screen good: The window is 1366 by 768 points at 125 % scale. It is read from 2 m, with 3.78 points to a millimetre, as measured against a card.',
      'voices good: The program does not speak, so it needs no voice on this computer.',
    ])
  })

  it('is worth a look where the screen was never measured', () => {
    expect(linesOf({ measured: false })[1]).toMatch(/^screen look: .* a guess: measure the screen/)
  })

  it('is bad where a weight of its type is missing, since widths are calculated with it', () => {
    expect(linesOf({ missingWeights: ['700'] })[0]).toMatch(/^fonts bad: .* is not loaded \(700\)/)
  })
})
