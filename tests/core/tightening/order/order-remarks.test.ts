import { describe, expect, it } from 'vitest'
import { orderRemarks } from '../../../../core/tightening/index.ts'
import { demoSpec, named } from '../../engine/demo.ts'
import { lineOf } from '../../../problem-line.ts'

function remarksOn(
  demo: string,
  procedureId: string,
  turned: (sequence: string[]) => string[] = (same) => same,
) {
  const spec = demoSpec(demo)
  const { face, orders } = named(spec.procedures, procedureId)
  return orderRemarks(spec, face, turned([...orders[0]!.sequence])).map(lineOf)
}

const ofCaps = (count: number) => `order-of-caps: caps=${count}`

describe('what is unusual about an order', () => {
  it('is measured over the whole of a joint that is one piece', () => {
    expect(remarksOn('skerry-3', 'case')).toEqual([])
    expect(remarksOn('skerry-3', 'case', (sequence) => sequence.toReversed())).toHaveLength(2)
  })

  it('says that there are caps from two on', () => {
    const two = demoSpec('skerry-3')
    const { face, orders } = named(two.procedures, 'rods')
    const [first, second, third, fourth] = orders[0]!.sequence as [string, string, string, string]
    const codes = orderRemarks(two, face, [first, second, third, fourth]).map(({ code }) => code)
    expect(codes).toEqual(['order-of-caps'])
    expect(orderRemarks(two, face, [first]).map(({ code }) => code)).toEqual([])
  })

  it('is measured cap by cap where the caps are separate, and says so', () => {
    expect(remarksOn('skerry-3', 'rods')).toEqual([ofCaps(3)])
    expect(remarksOn('tarn-4', 'caps')).toEqual([ofCaps(5)])
    expect(remarksOn('tarn-4', 'caps', (sequence) => sequence.toReversed())).toEqual([ofCaps(5)])
  })
})
