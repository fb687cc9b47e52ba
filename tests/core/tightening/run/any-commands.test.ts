import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  decideRun,
  evolveRun,
  isRunDone,
  lastLivePull,
  livePulls,
  nextPull,
  plannedPulls,
  pullKey,
  runEvent,
  windowOf,
  type Pull,
  type Run,
  type RunCommand,
  type RunEvent,
} from '../../../../core/tightening/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { twoCapsEngine } from '../two-caps-engine.ts'
import { winchEngine } from '../winch-engine.ts'
import { checkProperty } from '../../../property.ts'

/** Something a person may do: what it becomes depends on how the run stands. */
type Move = (run: Run | undefined) => RunCommand

const text = fc.constantFrom('', ' ', 'ok', 'wrong bolt', 'hose in the way', '\u{1F527}\u{1F527}\u{1F527}')
const reading = fc.option(
  fc.record({
    typed: fc.constantFrom('24', '12', '40', '15', '60', '0', '212', '-5', '1e999', 'abc', '', '24,5 Nm'),
    unit: fc.constantFrom('N·m' as const, 'lbf·ft' as const, 'lbf·in' as const, '°' as const),
  }),
)

/**
 * Any string of commands to one procedure, in part sensible so that runs come to their end, in part anything
 * at all.
 */
function moves(procedure: string, spec: EngineSpec): fc.Arbitrary<Move> {
  const plan = spec.procedures.find(({ id }) => id === procedure)!
  const ids = [...spec.fasteners.map(({ id }) => id), 'nobody', null]
  const anything: fc.Arbitrary<Move> = fc
    .oneof(
      fc.record({ type: fc.constantFrom('start-run' as const, 'resume-run' as const) }),
      fc.record({
        type: fc.constant('declare-new' as const),
        group: fc.constantFrom('cap-bolts', 'rod-bolts', 'none'),
      }),
      fc.record({
        type: fc.constant('pull' as const),
        pass: fc.nat(6),
        fastener: fc.constantFrom(...ids),
        reading,
        moved: fc.boolean(),
        outOfOrder: fc.option(text),
      }),
      fc.record({
        type: fc.constant('take-back' as const),
        pull: fc.integer({ min: 1, max: 8 }),
        reason: text,
      }),
      fc.record({ type: fc.constant('note-problem' as const), fastener: fc.constantFrom(...ids), text }),
      fc.record({
        type: fc.constant('answer-flag' as const),
        flag: fc.integer({ min: 1, max: 4 }),
        answer: text,
      }),
      fc.record({ type: fc.constant('pause-run' as const), reason: text }),
    )
    .map((command) => () => ({ ...command, procedure }))
  const goOn: fc.Arbitrary<Move> = fc
    .tuple(fc.boolean(), fc.constantFrom('2', '2.5', '3.9', '6', '30 N × 100 mm'))
    .map(([reads, turns]) => (run) => {
      if (run === undefined) return { type: 'start-run', procedure }
      if (run.paused !== null) return { type: 'resume-run', procedure }
      const next = nextPull(plan, run)
      const flag = run.flags.find(({ answer }) => answer === null)
      if (next === null)
        return { type: 'answer-flag', procedure, flag: flag?.number ?? 1, answer: 'put right' }
      if (isSingleUse(spec, procedure) && run.declaredNew.length === 0)
        return { type: 'declare-new', procedure, group: 'rod-bolts' }
      const window = windowOf(plan.passes[next.pass]!, next.fastener)
      const turned = window?.kind === 'turning' ? turns : null
      const typed = turned ?? (reads && window !== null && 'target' in window ? String(window.target) : null)
      const unit = window?.kind === 'angle' ? '°' : 'N·m'
      return {
        type: 'pull',
        procedure,
        ...next,
        reading: typed === null ? null : { typed, unit },
        moved: false,
        outOfOrder: null,
      }
    })
  const takeBack: fc.Arbitrary<Move> = fc.constant((run) => ({
    type: 'take-back',
    procedure,
    pull: lastLivePull(run)?.number ?? 1,
    notTurned: true,
    reason: 'wrong bolt',
  }))
  return fc.oneof(
    { weight: 6, arbitrary: goOn },
    { weight: 2, arbitrary: anything },
    { weight: 1, arbitrary: takeBack },
  )
}

function isSingleUse(spec: EngineSpec, procedure: string): boolean {
  const pulled = plannedPulls(spec.procedures.find(({ id }) => id === procedure)!)
  const groups = spec.fastenerGroups.filter(({ reuse }) => reuse === 'new-each-time')
  return pulled.some(({ fastener }) =>
    groups.some(({ id }) => id === spec.fasteners.find((each) => each.id === fastener)?.group),
  )
}

function frozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null) Object.values(Object.freeze(value)).forEach(frozen)
  return value
}

/** Carries the moves out, and looks at the run after each. */
function carryOut(
  spec: EngineSpec,
  moves: readonly Move[],
  look: (run: Run, before: Run | undefined, event: RunEvent) => void,
) {
  const events: RunEvent[] = []
  let run: Run | undefined
  for (const move of moves) {
    const decided = decideRun(spec, run, move(run))
    if (!decided.ok) continue
    for (const event of decided.value) {
      const before = run
      run = frozen(evolveRun(run, event))
      events.push(event)
      look(run, before, event)
    }
  }
  return { run, events }
}

const live = (run: Run) => run.pulls.filter(({ takenBack }) => takenBack === null)
const sameFastener = (pull: Pull) => (other: Pull) =>
  other.fastener === pull.fastener && other.cap === pull.cap && other.pass === pull.pass

describe.each([
  ['caps', winchEngine],
  ['rods', winchEngine],
  ['rods', twoCapsEngine],
])('any string of commands to the run of %s of an engine', (procedure, spec) => {
  const plan = spec.procedures.find(({ id }) => id === procedure)!
  const planned = plannedPulls(plan)
  const strings = fc.array(moves(procedure, spec), { maxLength: 60 })

  it('gives events that the record takes', () => {
    checkProperty(
      fc.property(strings, (moves) => {
        for (const event of carryOut(spec, moves, () => undefined).events)
          expect(runEvent.parse(event)).toEqual(event)
      }),
    )
  })

  it('leaves the run that its events add up to', () => {
    checkProperty(
      fc.property(strings, (moves) => {
        const { run, events } = carryOut(spec, moves, () => undefined)
        const read = JSON.parse(JSON.stringify(events)) as RunEvent[]
        expect(read.reduce<Run | undefined>(evolveRun, undefined)).toEqual(run)
      }),
    )
  })

  it('never pulls a fastener twice in a pass without taking it back, nor one that is not planned', () => {
    checkProperty(
      fc.property(strings, (moves) => {
        carryOut(spec, moves, (run) => {
          for (const pull of live(run)) {
            expect(live(run).filter(sameFastener(pull))).toHaveLength(1)
            expect(planned.map(pullKey)).toContain(pullKey(pull))
          }
        })
      }),
    )
  })

  it('never puts a pass of a fastener before an earlier pass of the same', () => {
    checkProperty(
      fc.property(strings, (moves) => {
        carryOut(spec, moves, (run) => {
          for (const { pass, fastener } of live(run).filter((pull) => pull.fastener !== null)) {
            const earlier = planned.filter((each) => each.fastener === fastener && each.pass < pass)
            const made = live(run).filter((each) => each.fastener === fastener && each.pass < pass)
            expect(made).toHaveLength(earlier.length)
          }
        })
      }),
    )
  })

  it('pulls in order, or with a reason', () => {
    checkProperty(
      fc.property(strings, (moves) => {
        carryOut(spec, moves, (_, before, event) => {
          if (event.type !== 'fastener-pulled' || event.outOfOrder !== null) return
          const open = planned.find((planned) => !livePulls(before).has(pullKey(planned)))
          expect(open && pullKey(open)).toBe(pullKey(event))
        })
      }),
    )
  })

  it('pulls nothing while paused, and no single-use fastener before it is declared new', () => {
    checkProperty(
      fc.property(strings, (moves) => {
        carryOut(spec, moves, (_, before, event) => {
          if (event.type !== 'fastener-pulled') return
          expect(before?.paused).toBeNull()
          if (isSingleUse(spec, procedure)) expect(before?.declaredNew).toEqual(['rod-bolts'])
        })
      }),
    )
  })

  it('is done only when all that was planned is pulled, every flag answered, and nothing paused', () => {
    checkProperty(
      fc.property(strings, (moves) => {
        carryOut(spec, moves, (run) => {
          const all = live(run).length === planned.length
          const answered = run.flags.every(({ answer }) => answer !== null)
          expect(isRunDone(plan, run)).toBe(all && answered && run.paused === null)
        })
      }),
    )
  })

  it('comes to the end often enough for the above to mean something', () => {
    const ends = fc
      .sample(fc.array(moves(procedure, spec), { minLength: 60, maxLength: 60 }), { numRuns: 200, seed: 7 })
      .filter((moves) => isRunDone(plan, carryOut(spec, moves, () => undefined).run))
    expect(ends.length).toBeGreaterThan(20)
  })
})

describe('a run of a thousand pulls', () => {
  it('keeps every one of them', () => {
    const ids = Array.from({ length: 1000 }, (_, index) => `bolt-${index}`)
    const events: RunEvent[] = [
      { type: 'run-started', version: 1, procedure: 'long' },
      ...ids.map((fastener, index): RunEvent => ({
        type: 'fastener-pulled',
        version: 1,
        procedure: 'long',
        pull: index + 1,
        pass: 0,
        fastener,
        reading: null,
        verdict: 'unread',
        outOfOrder: null,
      })),
    ]
    const run = events.reduce<Run | undefined>(evolveRun, undefined)
    expect(run?.pulls.map(({ fastener }) => fastener)).toEqual(ids)
  })
})
