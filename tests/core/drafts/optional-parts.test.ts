import { describe, expect, it } from 'vitest'
import {
  chartPositions,
  isSpareOrder,
  typedBand,
  typedEntry,
  withChartFor,
  orderNamed,
  withNewOrder,
  withoutOrder,
  withSequence,
  type TypedColumn,
} from '../../../core/drafts/index.ts'
import { readDocument } from '../../../core/engine/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import { documentOf } from './document-of-demo.ts'

const skerry = documentOf('skerry-3')

describe('a part that may be left out', () => {
  const measuring: readonly TypedColumn[] = [
    { key: 'planes', kind: 'number' },
    { key: 'directions', kind: 'number' },
    { key: 'taper', kind: 'size', optional: true },
  ]

  it('has its sizes in the unit of the manual', () => {
    expect(typedEntry(measuring, { planes: '2', directions: '3', taper: '0.0002' }, 'in')).toEqual({
      ...{ planes: 2, directions: 3, taper: '0.0002 in' },
    })
  })

  it('may have parts within its parts, a decimal comma, and a range of sizes', () => {
    const ring: readonly TypedColumn[] = [
      { key: 'endGap.perBore', kind: 'number' },
      { key: 'endGap.minimum', kind: 'size', optional: true },
    ]
    expect(typedEntry(ring, { 'endGap.perBore': '0,004' }, 'mm', { id: 'ring-1' })).toEqual({
      id: 'ring-1',
      endGap: { perBore: 0.004 },
    })
    expect(typedBand('1.500 – 1.503 mm')).toEqual({ over: '1.500 mm', upTo: '1.503 mm' })
    expect(typedBand('62 mm H6')).toBe('62 mm H6')
  })

  it('is refused in a sentence that says what was typed, where that is no number', () => {
    const typed = typedEntry(measuring, { planes: 'two', directions: '3' }, 'mm')
    const fits = skerry.fits.map((fit) => ({ ...fit, measuring: typed }))
    const read = readDocument({ ...skerry, fits } as never, 'en')
    if (read.ok) throw new Error('it was read')
    expect(sentenceOf(read.problems[0]!)).toContain('“two”')
  })
})

describe('an order more of a procedure', () => {
  const procedure = skerry.procedures[0]!.id

  it('is called as it was typed, as far as that can be a name in a spec, and never as another one', () => {
    const named = (typed: string) => withNewOrder(skerry, procedure, typed).named.order
    expect([named('Loosening'), named('by rod'), named('by-rod')]).toEqual([
      ...['Loosening', 'by-rod-2', 'by-rod-2'],
    ])
  })

  it('goes through the fasteners of the first one until it is tapped, and goes again while no pass needs it', () => {
    const { document, named } = withNewOrder(skerry, procedure, 'Loosening')
    expect(readDocument(document, 'en').ok).toBe(true)
    const [first, more] = document.procedures[0]!.orders
    expect(more).toEqual({ id: 'Loosening', name: 'Loosening', sequence: first!.sequence })
    const tapped = withSequence(document, named, first!.sequence.toReversed())
    expect(tapped).toMatchObject({ ok: true })
    expect(tapped.ok && orderNamed(tapped.value, named)?.name).toBe('Loosening')
    expect([isSpareOrder(document, named), isSpareOrder(document, { procedure, order: first!.id })]).toEqual([
      ...[true, false],
    ])
    expect(withoutOrder(document, named)).toEqual(skerry)
    expect(isSpareOrder(skerry, { procedure, order: first!.id })).toBe(false)
  })
})

describe('a chart that differs from bearing to bearing', () => {
  const cell = { housing: '1', journal: 'F', upper: 'S', lower: 'S' }
  const { chart } = skerry.fits[0]!

  it('stands beside the one for all others, and each is replaced and left out by itself', () => {
    expect(chartPositions(chart)).toEqual([null])
    const both = withChartFor(chart, ['M1', 'M2'], [cell])!
    expect(both).toEqual([...chart!, { ...cell, positions: ['M1', 'M2'] }])
    expect(chartPositions(both)).toEqual([null, ['M1', 'M2']])
    expect(withChartFor(both, ['M1', 'M2'], undefined)).toEqual(chart)
    expect(withChartFor(both, null, undefined)).toEqual([{ ...cell, positions: ['M1', 'M2'] }])
  })

  it('is no chart at all once its last cell is left out', () => {
    expect(withChartFor([cell], null, undefined)).toBeUndefined()
  })
})
