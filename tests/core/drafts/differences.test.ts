import { describe, expect, it } from 'vitest'
import { differencesBetween, documentIn, type OpenDocument } from '../../../core/drafts/index.ts'
import { textIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { demoText } from '../engine/demo.ts'

/** What differs after a change of a demo, a line each. */
function after(change: (document: OpenDocument) => void): readonly string[] {
  const [before, changed] = [documentIn(demoText('skerry-3')), documentIn(demoText('skerry-3'))]
  change(changed)
  return differencesBetween(en, before, changed, 'en').map(
    (each) => `${textIn(en, en.phrases, each.place)}: ${each.before ?? '–'} → ${each.after ?? '–'}`,
  )
}

describe('what differs between two revisions', () => {
  it('is nothing where nothing does, and checks alone are no difference', () => {
    expect(after(() => undefined)).toEqual([])
    const check = { path: 'case.bore', by: 'Ana Ruiz', on: '2026-03-02', how: 'same' as const }
    expect(after((document) => void (document.checks = [check]))).toEqual([])
  })

  it('is a value with what stood there before', () => {
    expect(after((document) => void (document.case.bore = '85 mm'))).toEqual([
      'case, cylinder bore: 84 mm → 85 mm',
    ])
  })

  it('is found by the id of an entry, wherever that stands now', () => {
    expect(after(({ case: { saddles } }) => void (saddles[1]!.diameter = '56 mm'))).toEqual([
      'case, saddle “M2”, diameter: 55 mm → 56 mm',
    ])
    const less = after(({ cautions }) => void cautions.pop())
    expect(less).toHaveLength(1)
  })

  it('is one line for entries in another order, and for an order of fasteners', () => {
    expect(after(({ case: { rods } }) => void rods!.reverse())).toEqual([
      'case, rods: B1, B2, B3 → B3, B2, B1',
    ])
    const [order] = after(({ procedures }) => void procedures[0]!.orders[0]!.sequence.reverse())
    expect(order).toMatch(/^procedure “.+”, order “.+”, sequence: .+ → .+/)
  })

  it('names what was added and what is gone', () => {
    const [gone] = after(({ case: { rods } }) => void rods!.splice(1, 1))
    expect(gone).toMatch(/^case, rod “B2”: B2, .*196 mm, 24 mm, .* → –$/)
    expect(
      after((document) => void (document.rodSideClearance = undefined)).every((line) => line.endsWith('→ –')),
    ).toBe(true)
  })

  it('gives a translated text in the language that is asked for', () => {
    expect(after((document) => void (document.name = 'Skerry'))).toEqual([
      expect.stringMatching(/^name: .*Skerry 3.* → Skerry$/),
    ])
  })
})
