import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { audit } from '../../../../core/audit/index.ts'
import { decide, isStepDone } from '../../../../core/builds/index.ts'
import type { Step } from '../../../../core/engine/index.ts'
import { checkProperty } from '../../../property.ts'
import { Workshop } from '../../builds/workshop.ts'
import { demoDraft, specOf, type Draft } from '../../engine/demo.ts'

const count = 6
/** Which of six looks comes after which: a pair is one after the other, itself among them. */
const orders = fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1)), { maxLength: 7 })

/** The plan of the demo with six looks at the bench beside it. */
function planOf(pairs: readonly (readonly [number, number])[]): Draft {
  const draft = demoDraft('fen-1')
  const looks = Array.from({ length: count }, (_, index) => ({
    ...{ id: `look-${index}`, name: `Look ${index}`, kind: 'check' as const, instruction: 'Look at it.' },
    after: [...new Set(pairs.flatMap(([later, earlier]) => (later === index ? [`look-${earlier}`] : [])))],
  }))
  return { ...draft, steps: [...draft.steps, ...looks] }
}

/** Whether something comes after itself by any way: Warshall's closure, which knows nothing of the audit. */
function hasRing(pairs: readonly (readonly [number, number])[]): boolean {
  const reach = Array.from({ length: count }, () => Array<boolean>(count).fill(false))
  for (const [later, earlier] of pairs) reach[later]![earlier] = true
  for (let by = 0; by < count; by++)
    for (let from = 0; from < count; from++)
      for (let to = 0; to < count; to++) reach[from]![to] ||= reach[from]![by]! && reach[by]![to]!
  return reach.some((row, index) => row[index])
}

describe('any plan', () => {
  it('is a fault where steps wait for one another in a ring, and only there; else every step of it is reached', () => {
    let [rings, reached] = [0, 0]
    checkProperty(
      fc.property(orders, (pairs) => {
        const spec = specOf(planOf(pairs))
        const found = audit(spec).filter(({ problem }) => problem.code === 'steps-in-a-ring')
        expect(found.length > 0).toBe(hasRing(pairs))
        if (found.length > 0) {
          rings += 1
          return
        }
        const shop = new Workshop(spec)
        const looks = spec.steps.filter(({ id }) => id.startsWith('look-'))
        const answer = ({ id }: Step) =>
          ({ type: 'answer-check', step: id, good: true, reading: null, note: '' }) as const
        for (let done = 0; done < count; done++) {
          const open = looks.find(
            (step) => !isStepDone(spec, shop.state, step) && decide(spec, shop.state, answer(step), null).ok,
          )
          if (open !== undefined) shop.does(answer(open))
        }
        expect(looks.filter((step) => !isStepDone(spec, shop.state, step))).toEqual([])
        // Each was done after all that it comes after.
        const at = new Map(
          shop.entries.flatMap(({ seq, event }) => ('step' in event ? [[event.step, seq]] : [])),
        )
        for (const [later, earlier] of pairs)
          expect(at.get(`look-${later}`)!).toBeGreaterThan(at.get(`look-${earlier}`)!)
        reached += 1
      }),
    )
    expect(rings).toBeGreaterThan(5)
    expect(reached).toBeGreaterThan(5)
  })
})
