import { describe, expect, it } from 'vitest'
import { plannedPulls } from '../../../core/tightening/index.ts'
import { engineOf } from '../../../renderer/gallery/engines.ts'
import { OrderDraft } from '../../../renderer/steps/run/order/order-draft.svelte.ts'

const { spec } = engineOf('skerry-3')
const rods = spec.procedures.find(({ id }) => id === 'rods')!

function fastenersOf(draft: OrderDraft) {
  return draft.planned && plannedPulls(draft.planned).map(({ fastener }) => fastener?.replace('rod-', ''))
}

describe('an own order', () => {
  it('shows the pulls of all passes as the maker has them before anything is named', () => {
    expect(fastenersOf(new OrderDraft(spec, rods))).toEqual([...'123456', ...'123456', ...'123456'])
  })

  it('shows none while fasteners are still to come', () => {
    const draft = new OrderDraft(spec, rods)
    draft.typed = 'R6 R5'
    expect(draft.planned).toBeNull()
  })

  it('shows those of every pass in the order that was made', () => {
    const draft = new OrderDraft(spec, rods)
    draft.typed = 'R6 R5 R4 R3 R2 R1'
    expect(fastenersOf(draft)).toEqual([...'654321', ...'654321', ...'654321'])
  })

  it('shows the maker’s where that was typed', () => {
    const draft = new OrderDraft(spec, rods)
    draft.typed = 'R1 R2 R3 R4 R5 R6'
    expect(draft.made).toBeNull()
    expect(draft.planned).toBe(rods)
  })
})
