import { describe, expect, it } from 'vitest'
import { amountsIn, newtonMetres } from '../../core/quantity/index.ts'
import { en } from '../../core/words/index.ts'
import { wordsWithNoBreakSpaces, withNoBreakSpaces } from '../../renderer/no-break-spaces.ts'

describe('a number and its unit at the end of a line', () => {
  it('keep together, in every unit that the window shows', () => {
    expect(withNoBreakSpaces('20 µm to 50 µm, 24 N·m, 0.005 in, ½ m, 4 min 5 s, 60 °')).toBe(
      '20\u00a0µm to 50\u00a0µm, 24\u00a0N·m, 0.005\u00a0in, ½\u00a0m, 4\u00a0min 5\u00a0s, 60\u00a0°',
    )
  })

  it('are told from a number before a word that begins alike', () => {
    expect(withNoBreakSpaces('4 main saddles, 2 new ones, 3 sheets')).toBe(
      '4 main saddles, 2 new ones, 3 sheets',
    )
  })

  it('leave no … for the next line', () => {
    expect(withNoBreakSpaces('Close the joint anyway …')).toBe('Close the joint anyway\u00a0…')
  })

  it('keep together in sentences, in quantities, and in texts of parts', () => {
    const words = wordsWithNoBreakSpaces(en)
    expect(amountsIn(words).torque(newtonMetres(21), 'N·m')).toBe('21\u00a0N·m')
    expect(words.shells.allowedWhenNew({ least: '20 µm', most: '50 µm' })).toContain('50\u00a0µm')
    expect(words.partsList.part({ name: 'Piston', count: 4, place: '4 mm deep' })).toEqual([
      { strong: 'Piston (4)' },
      ', 4\u00a0mm deep',
    ])
  })
})
