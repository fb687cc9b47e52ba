import { describe, expect, it } from 'vitest'
import { degrees } from '../../../core/quantity/index.ts'
import { turnOnDrawing, type NextTurn } from '../../../renderer/steps/run/turn/next-turn.ts'

const sixty = { kind: 'angle', target: degrees(60), least: degrees(57), most: degrees(63) } as const
const fifth: NextTurn = {
  fastener: 'case-5',
  window: { ...sixty, tolerance: 'spec' },
  pull: 'case/12',
}

describe('the protractor on the drawing', () => {
  it('is at the fastener that is next', () => {
    expect(turnOnDrawing(fifth, { actOn: null })).toBe(fifth)
  })

  it('is nowhere while another fastener is flagged and has to be answered for', () => {
    expect(turnOnDrawing(fifth, { actOn: 'fastener/case-4' })).toBeNull()
  })

  it('stays at a fastener that was turned short, and is turned on where it stands', () => {
    expect(turnOnDrawing(fifth, { actOn: 'fastener/case-5' })).toBe(fifth)
  })
})
