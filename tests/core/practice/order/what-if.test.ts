import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { atOnce } from '../../../../core/joint/index.ts'
import {
  fastenersToTry,
  inTriedOrder,
  patternToTry,
  proceduresToTry,
  triedPatterns,
  whatIf,
} from '../../../../core/practice/index.ts'
import { clampRun, passDifferences, plannedIn } from '../../../../core/tightening/index.ts'
import { checkProperty } from '../../../property.ts'
import { demo, demos } from '../../layout/demos.ts'

const procedures = demos.flatMap((spec) => proceduresToTry(spec).map((procedure) => ({ spec, procedure })))
const skerry = demo('skerry-3')
const caseBolts = skerry.procedures.find(({ name }) => name === 'Case bolts')!

describe('an order that is tried', () => {
  it('goes through every pass with the fasteners of that pass, each once, in the order that was tapped', () => {
    checkProperty(
      fc.property(fc.constantFrom(...procedures), fc.infiniteStream(fc.nat()), ({ procedure }, chance) => {
        const order = fastenersToTry(procedure)
          .map((id) => ({ id, at: chance.next().value ?? 0 }))
          .toSorted((a, b) => a.at - b.at)
          .map(({ id }) => id)
        const tried = inTriedOrder(procedure, order)
        for (const pass of procedure.passes.keys()) {
          const pulled = plannedIn(tried, pass).flatMap(({ fastener }) => fastener ?? [])
          const specOrder = plannedIn(procedure, pass).flatMap(({ fastener }) => fastener ?? [])
          expect(pulled.toSorted()).toEqual(specOrder.toSorted())
          // A loosening pass goes backwards.
          const places = pulled.map((id) => order.indexOf(id))
          const rising = places.toSorted((a, b) => a - b)
          expect([rising, rising.toReversed()]).toContainEqual(places)
        }
      }),
      { numRuns: 60, leastShare: 0.95 },
    )
  })

  it('by a pattern has every fastener of the procedure once', () => {
    for (const { spec, procedure } of procedures)
      for (const pattern of triedPatterns)
        expect(patternToTry(spec, procedure, pattern).toSorted()).toEqual(
          fastenersToTry(procedure).toSorted(),
        )
  })

  it('begins at both ends with “ends first”, and finishes a row before it begins the next with “row by row”', () => {
    const at = (id: string) => skerry.fasteners.find((fastener) => fastener.id === id)!.at
    const xs = fastenersToTry(caseBolts).map((id) => at(id)[0])
    const [first, second] = patternToTry(skerry, caseBolts, 'ends-first')
    for (const id of [first!, second!]) expect([Math.min(...xs), Math.max(...xs)]).toContain(at(id)[0])
    const sides = patternToTry(skerry, caseBolts, 'row-by-row').map((id) => Math.sign(at(id)[1]))
    expect(sides.filter((side, place) => place > 0 && side !== sides[place - 1])).toHaveLength(1)
  })

  it('is run by the model in parts as the clamp map runs it at once', () => {
    const order = patternToTry(skerry, caseBolts, 'end-to-end')
    const found = atOnce(whatIf(skerry, caseBolts, order, 'gasket'))
    const [asGiven, tried] = [caseBolts, inTriedOrder(caseBolts, order)].map((each) =>
      clampRun(skerry, each, 'gasket'),
    )
    if (!found.ok || !asGiven?.ok || !tried?.ok) throw new Error('the demo engine cannot be calculated')
    expect(found.value.asGiven.map.afterPulls).toEqual(asGiven.value.map.afterPulls)
    expect(found.value.tried.map.afterPulls).toEqual(tried.value.map.afterPulls)
    const most = passDifferences(found.value.asGiven, found.value.tried).map(({ first, second }) =>
      Math.abs(first - second),
    )
    expect(Math.max(...most)).toBeGreaterThan(100)
  })

  it('differs in nothing where it is the spec’s own', () => {
    const found = atOnce(whatIf(skerry, caseBolts, fastenersToTry(caseBolts), 'gasket'))
    if (!found.ok) throw new Error('the demo engine cannot be calculated')
    const differences = passDifferences(found.value.asGiven, found.value.tried)
    // One for each pass but the action between them, which moves no bolt.
    expect(differences).toHaveLength(4)
    for (const { first, second } of differences) expect(second).toBe(first)
  })

  it('is not offered where no pass goes over two fasteners', () => {
    const sequence = [skerry.fasteners[0]!.id]
    const lone = { ...caseBolts, orders: caseBolts.orders.map((each) => ({ ...each, sequence })) }
    expect(proceduresToTry({ ...skerry, procedures: [lone] })).toEqual([])
    expect(proceduresToTry({ ...skerry, procedures: [] })).toEqual([])
  })
})
