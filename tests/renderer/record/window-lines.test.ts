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
  ...{ voice: null, canSpeak: true, speaks: false, hasSerial: true, instruments: [] },
}
const linesOf = (change: Partial<WindowState> = {}) =>
  windowLines(en, { ...seen, ...change }).map(
    ({ subject, state, sentence }) => `${subject} ${state}: ${sentence}`,
  )

describe('what the window says of itself', () => {
  it('is its type, its screen and how that is read, its voice and its instruments', () => {
    expect(linesOf()).toEqual([
      'fonts good: Atkinson Hyperlegible Next is loaded, plain and bold.',
      'screen good: The window is 1366 by 768 points at 125 % scale. It is read from 2 m, with 3.78 points to a millimetre, as measured against a card.',
      'voices good: There is no English voice that works without a network, so prompts are shown on the screen alone.',
      'instruments good: No instrument on a serial line is written down.',
    ])
  })

  it('is worth a look where the screen was never measured', () => {
    expect(linesOf({ measured: false })[1]).toMatch(/^screen look: .* a guess: measure the screen/)
  })

  it('is bad where a weight of its type is missing, since widths are calculated with it', () => {
    expect(linesOf({ missingWeights: ['700'] })[0]).toMatch(/^fonts bad: .* is not loaded \(700\)/)
  })

  it('names the voice, and is worth a look where prompts were switched on and none is there', () => {
    expect(linesOf({ voice: 'Alba', speaks: true })[2]).toBe(
      'voices good: Prompts are said aloud with the voice Alba.',
    )
    expect(linesOf({ speaks: true })[2]).toMatch(/^voices look: /)
    expect(linesOf({ canSpeak: false })[2]).toBe(
      'voices good: This browser cannot speak. Prompts are shown on the screen alone.',
    )
  })

  it('names the instruments, and is worth a look where one is not connected or none can be', () => {
    const instruments = [
      { name: 'Click 100', isOpen: true },
      { name: 'Depth gauge', isOpen: false },
    ]
    expect(linesOf({ instruments })[3]).toBe('instruments look: Click 100, Depth gauge: 1 of 2 connected.')
    expect(linesOf({ instruments: instruments.slice(0, 1) })[3]).toMatch(/^instruments good: .* 1 of 1 /)
    expect(linesOf({ instruments, hasSerial: false })[3]).toMatch(
      /^instruments look: This browser has no Web Serial/,
    )
  })
})
