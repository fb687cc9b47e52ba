import { describe, expect, it } from 'vitest'
import { isBlind, isTheSame, valuesToCheck } from '../../../core/drafts/index.ts'
import { entered } from './document-of-demo.ts'

describe('the values that a second person compares', () => {
  const values = valuesToCheck(entered)
  const at = (path: string) => values.find((value) => value.path === path)

  it('are each once, with what they are', () => {
    expect(new Set(values.map(({ path }) => path)).size).toBe(values.length)
    expect(at('case.bore')).toMatchObject({ kind: 'other', shown: entered.case.bore })
    const kinds = (kind: string) => values.filter((value) => value.kind === kind).map(({ path }) => path)
    expect(kinds('torque').every((path) => /^procedures\[\d+\]|^fastenerGroups|turning/.test(path))).toBe(
      true,
    )
    expect(kinds('torque').length).toBeGreaterThan(5)
    expect(kinds('angle').length).toBeGreaterThan(0)
    expect(kinds('order').length).toBe(entered.procedures.flatMap(({ orders }) => orders).length)
  })

  it('are every text of a document that is a torque or an angle in a pass', () => {
    const texts = JSON.stringify(entered.procedures).match(/"[^"]*\d (N·m|lbf·ft|°)"/g) ?? []
    const found = values.filter(
      ({ path, kind }) => path.startsWith('procedures') && /torque|angle/.test(kind),
    )
    expect(found.length).toBe(texts.length)
    expect(found.every(isBlind)).toBe(true)
  })

  it('are no marks of bearings, though a mark may be a number', () => {
    const [fit] = entered.fits
    const numbered = {
      ...fit!,
      housing: {
        ...fit!.housing,
        marks: fit!.housing.marks.map((each, at) => ({ ...each, mark: `${at + 1}` })),
      },
    }
    const found = valuesToCheck({ ...entered, fits: [numbered] }).map(({ path }) => path)
    expect(found.filter((path) => path.startsWith('fits')).length).toBeGreaterThan(3)
    expect(found.filter((path) => path.endsWith('.mark'))).toEqual([])
  })

  it('are no places on the drawing and no names', () => {
    expect(values.some(({ path }) => /\.(at|path|name|id)\b/.test(path))).toBe(false)
  })
})

describe('what is typed unseen', () => {
  const value = (kind: 'torque' | 'angle' | 'order', shown: string) => ({ keys: [], path: 'x', kind, shown })

  it.each([
    ['torque', '30 lbf·ft', '30', true],
    ['torque', '30 lbf·ft', '30.0 ft-lb', true],
    ['torque', '30 lbf·ft', '31', false],
    ['torque', '30 lbf·ft', '30 N·m', false],
    ['torque', '30 lbf·ft (41 N·m)', '30 lbf·ft', true],
    ['angle', '90 °', '90', true],
    ['angle', '90 °', '60', false],
    ['order', '3 1 4 A2', '3, 1, 4, a2', true],
    ['order', '3 1 4', '3 4 1', false],
    ['order', '3 1 4', '31 4', false],
  ] as const)('%s %s: %s', (kind, shown, typed, is) => {
    expect(isTheSame(value(kind, shown), typed)).toEqual({ ok: true, value: is })
  })

  it.each([
    ['target', '30 lbf·ft (40 N·m)', '30 ± 3 lbf·ft', true],
    ['least', '27 lbf·ft (36 N·m)', '30 ± 3 lbf·ft (40 ± 4 N·m)', true],
    ['most', '33 lbf·ft', '30 ± 3 lbf·ft', true],
    ['most', '34 lbf·ft', '30 ± 3 lbf·ft', false],
    ['least', '150 lbf·ft', '150 to 160 lbf·ft', true],
    ['least', '150 lbf·ft', '150 lbf·ft', true],
  ] as const)('%s %s may be typed as the manual prints it, %s: %s', (key, shown, typed, is) => {
    const keys = ['procedures', 0, 'passes', 0, key]
    expect(isTheSame({ ...value('torque', shown), keys }, typed)).toEqual({ ok: true, value: is })
  })

  it('is asked for again where it cannot be read', () => {
    expect(isTheSame(value('torque', '30 N·m'), 'thirty')).toMatchObject({ ok: false })
  })
})
