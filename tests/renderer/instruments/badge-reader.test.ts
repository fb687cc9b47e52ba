import { describe, expect, it } from 'vitest'
import { couldBeReading } from '../../../renderer/instruments/badge-reader.ts'

describe('what a badge types, where a reading can be typed', () => {
  it.each(['24.2', '24,2', '-0.013', '+30.2 lbf·ft', '32 N·m', '66°', '0.12mm', '12345'])(
    '“%s” is a reading',
    (sent) => {
      expect(couldBeReading(sent)).toBe(true)
    },
  )

  it.each(['B4711', 'A-17', 'RUIZ 04', '17-B-2209', ''])('“%s” is none', (sent) => {
    expect(couldBeReading(sent)).toBe(false)
  })
})
