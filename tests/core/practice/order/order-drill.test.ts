import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import {
  answerOrder,
  beginOrder,
  gradeOf,
  orderConsequence,
  orderDrill,
  unnumbered,
  type OrderDrill,
} from '../../../../core/practice/index.ts'
import { bareFacts, sceneOf } from '../../../../core/layout/index.ts'
import { atOnce } from '../../../../core/joint/index.ts'
import { nextPull } from '../../../../core/tightening/index.ts'
import type { Run } from '../../../../core/tightening/index.ts'
import { en } from '../../../../core/words/index.ts'
import { checkProperty } from '../../../property.ts'
import { anyEngine } from '../../layout/any-engine.ts'
import { demo, demos } from '../../layout/demos.ts'

const seeds = fc.integer({ min: 0, max: 10_000 }).map((round) => `round ${round}`)

/** An engine of any size with one procedure over all its fasteners, in an order drawn by chance. */
const ordered = fc.tuple(anyEngine, fc.infiniteStream(fc.nat())).map(([spec, chance]): EngineSpec => {
  const drawn = spec.fasteners.map(({ id }) => ({ id, at: chance.next().value ?? 0 }))
  const sequence = drawn.toSorted((a, b) => a.at - b.at).map(({ id }) => id)
  const [pattern] = demo('skerry-3').procedures
  const passes = pattern!.passes.map((pass) => (pass.kind === 'action' ? pass : { ...pass, order: 'any' }))
  return {
    ...spec,
    procedures: [{ ...pattern!, face: 'joint', orders: [{ id: 'any', sequence }], passes }],
  }
})

/** A run in which everything before a pull is pulled: what it asks for next is found by the run itself. */
function runUpTo({ procedure, pass, cap, before, key }: OrderDrill, named: number): Run {
  const inPass = (index: number, at: readonly string[] | null) => {
    const each = procedure.passes[index]!
    const order = each.kind === 'action' ? [] : procedure.orders.find(({ id }) => id === each.order)!.sequence
    const only = each.kind === 'recheck' ? each.only : undefined
    return order
      .filter((id) => (only?.includes(id) ?? true) && (at?.includes(id) ?? true))
      .map((fastener) => ({ pass: index, fastener: fastener as string | null, cap: null as string | null }))
  }
  const isMore = (index: number) => {
    const each = procedure.passes[index]!
    return each.kind === 'action' || (each.kind === 'seat' && each.gap !== undefined)
  }
  const passes = [...procedure.passes.keys()]
  const rounds = (of: string | null, fasteners: readonly string[] | null, through: readonly number[]) =>
    through.flatMap((index) => [
      ...inPass(index, fasteners),
      ...(isMore(index) ? [{ pass: index, fastener: null, cap: of }] : []),
    ])
  const caps = procedure.caps ?? []
  const here = caps.findIndex(({ id }) => id === cap)
  const earlier = [
    ...caps.slice(0, Math.max(here, 0)).flatMap(({ id, fasteners }) => rounds(id, fasteners, passes)),
    ...rounds(cap, caps[here]?.fasteners ?? null, passes.slice(0, pass)),
  ]
  const ofOthers = caps.slice(0, Math.max(here, 0)).flatMap(({ fasteners }) => fasteners)
  const inThis = [...before.filter((id) => !ofOthers.includes(id)), ...key.slice(0, named)]
  const pulls = [...earlier, ...inThis.map((fastener) => ({ pass, fastener, cap: null }))]
  return {
    procedure: procedure.id,
    ownOrder: null,
    declaredNew: [],
    flags: [],
    loosened: [],
    paused: null,
    pulls: pulls.map((pull, index) => ({
      ...{
        ...pull,
        number: index + 1,
        turning: null,
        reading: null,
        from: 0 as never,
        held: null,
        running: null,
        verdict: 'within',
      },
      ...{ outOfOrder: null, takenBack: null, stretch: null, torque: null, setAside: null },
    })),
  }
}

describe('an order drill', () => {
  it('asks, at each place of any engine, for the fastener that a run would ask for', () => {
    let questions = 0
    checkProperty(
      fc.property(fc.oneof(fc.constantFrom(...demos), ordered), seeds, (spec, seed) => {
        const drill = orderDrill(spec, seed)!
        drill.key.forEach((fastener, named) => {
          expect(nextPull(drill.procedure, runUpTo(drill, named))).toEqual({ pass: drill.pass, fastener })
          questions += 1
        })
      }),
      { numRuns: 60, leastShare: 0.95 },
    )
    expect(questions).toBeGreaterThan(300)
  })

  it('is done without an error by somebody who answers with its key, and has what follows among its choices', () => {
    checkProperty(
      fc.property(fc.constantFrom(...demos), seeds, (spec, seed) => {
        const drill = orderDrill(spec, seed)!
        let attempt = beginOrder(drill)
        const says = (answer: Parameters<typeof answerOrder>[2]) => {
          const answered = answerOrder(spec, attempt, answer)
          expect(answered.mistake).toBeNull()
          attempt = answered.attempt
        }
        for (const fastener of drill.key) says({ kind: 'fastener', fastener })
        if (drill.after !== null) {
          expect(drill.after.choices).toContain(drill.after.key)
          says({ kind: 'pass-complete' })
          says({ kind: 'after', pass: drill.after.key })
        }
        expect(attempt.asks).toBe('nothing')
        expect(attempt.tally).toHaveLength(drill.key.length + (drill.after === null ? 0 : 2))
        expect(gradeOf(attempt.tally)).toBe('good')
      }),
      { numRuns: 100, leastShare: 0.95 },
    )
  })

  it('is the same for the same seed, and another one for most others', () => {
    for (const spec of demos) {
      expect(orderDrill(spec, 'a')).toEqual(orderDrill(spec, 'a'))
      const drawn = Array.from({ length: 40 }, (_, round) => orderDrill(spec, `round ${round}`)!)
      const passes = new Set(drawn.map(({ procedure, pass }) => `${procedure.id}/${pass}`))
      const all = spec.procedures.flatMap(({ passes }) => passes.filter(({ kind }) => kind !== 'action'))
      expect(passes.size).toBeGreaterThan(Math.min(all.length, 12) * 0.6)
    }
  })

  it('goes on with one fastener, and is not offered without a pass', () => {
    const spec = demo('skerry-3')
    const [procedure] = spec.procedures
    const one = spec.fasteners[0]!.id
    const lone = { ...procedure!, orders: procedure!.orders.map((each) => ({ ...each, sequence: [one] })) }
    const drill = orderDrill({ ...spec, procedures: [lone] }, 'lone')!
    expect(drill.key).toEqual([one])
    expect(orderDrill({ ...spec, procedures: [] }, 'none')).toBeNull()
  })
})

describe('a mistake in the order', () => {
  const spec = demo('skerry-3')
  const torqued = Array.from({ length: 60 }, (_, round) => orderDrill(spec, `round ${round}`)!).find(
    ({ procedure, pass, key }) => procedure.passes[pass]!.kind === 'torque' && key.length >= 8,
  )!

  it('is counted at the fastener that was asked for, until it is named', () => {
    let { attempt } = answerOrder(spec, beginOrder(torqued), { kind: 'fastener', fastener: torqued.key[3]! })
    const early = answerOrder(spec, attempt, { kind: 'pass-complete' })
    expect(early.mistake).toEqual({ kind: 'not-complete', left: torqued.key.length })
    attempt = early.attempt
    expect(attempt.named).toBe(0)
    ;({ attempt } = answerOrder(spec, attempt, { kind: 'fastener', fastener: torqued.key[0]! }))
    expect(attempt.tally).toEqual([{ about: `fastener/${torqued.key[0]!}`, errors: 2 }])
    const again = answerOrder(spec, attempt, { kind: 'fastener', fastener: torqued.key[0]! })
    expect(again.mistake).toEqual({ kind: 'already-pulled', fastener: torqued.key[0] })
  })

  it('is answered with what the joint would be like: loads of both orders after the same pulls', () => {
    let differing = 0
    // Those of few fasteners: the model is run twice for each.
    for (const engine of ['carr-v2', 'fen-1', 'holm-2', 'skerry-3', 'tarn-4'].map(demo)) {
      const drill = Array.from({ length: 60 }, (_, round) => orderDrill(engine, `round ${round}`)!).find(
        ({ procedure, pass, key }) => procedure.passes[pass]!.kind === 'torque' && key.length > 3,
      )
      if (drill === undefined) continue
      const found = atOnce(orderConsequence(engine, drill, drill.key[0]!, drill.key.at(-1)!))
      if (!found.ok || found.value === null) continue
      const { right, wrong, most } = found.value
      expect(wrong.pulls).toHaveLength(right.pulls.length)
      const inPass = (run: typeof right) =>
        run.pulls.filter(({ pass }) => pass === drill.pass).map(({ bolt }) => bolt)
      expect(new Set(inPass(wrong))).toEqual(new Set(inPass(right)))
      expect(inPass(wrong)).not.toEqual(inPass(right))
      expect(most.pass).toBe(drill.pass)
      if (Math.abs(most.first - most.second) > 100) differing += 1
    }
    expect(differing).toBeGreaterThan(2)
  })
})

describe('a drawing without numbers', () => {
  it('shows and says no number but those that are to be shown', () => {
    let hidden = 0
    for (const spec of demos)
      for (const face of spec.case.faces) {
        const here = spec.fasteners.filter((fastener) => fastener.face === face.id)
        if (here.length === 0) continue
        const view = { from: face.workedFrom, turn: 0 } as const
        const facts = { ...bareFacts(face.id), subject: 'tightening' } as const
        const sheet = { widthPx: 900, heightPx: 640, capitalPx: 18 }
        const scene = sceneOf(en, spec, facts, view, sheet)
        const shown = unnumbered(en, spec, scene, new Set([here[0]!.id]))
        const texts = shown.shapes.flatMap((shape) =>
          shape.kind === 'text' && shape.about?.startsWith('fastener/') ? [shape.text] : [],
        )
        expect(texts).toEqual([here[0]!.number])
        const rows = shown.rows.filter(({ about }) => about.startsWith('fastener/'))
        expect(new Set(rows.map(({ text }) => text)).size).toBe(here.length)
        hidden += rows.slice(1).length
      }
    expect(hidden).toBeGreaterThan(100)
  })
})
