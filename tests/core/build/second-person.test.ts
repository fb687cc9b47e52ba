import { describe, expect, it } from 'vitest'
import {
  awaitsSecondPerson,
  buildSheet,
  decide,
  evolve,
  emptyBuild,
  startBuild,
} from '../../../core/build/index.ts'
import type { BuildCommand, BuildState, RecordedEvent } from '../../../core/build/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import type { EngineSpec } from '../../../core/spec/index.ts'
import { nextCommand } from './next-command.ts'
import { demoEngine, newBuild } from './workshop.ts'

const marked = ['Case marks', 'Rod bolts']

/** The split-case three, in which somebody must look at the case marks and the rod bolts of an apprentice. */
const skerry: EngineSpec = withSecondPerson(demoEngine('skerry-3'))

function withSecondPerson(spec: EngineSpec): EngineSpec {
  return {
    ...spec,
    steps: spec.steps.map((step) =>
      marked.includes(step.name) ? { ...step, secondPerson: 'for-an-apprentice' as const } : step,
    ),
  }
}

const steps = skerry.steps.filter(({ secondPerson }) => secondPerson !== undefined)

class Bench {
  state: BuildState = emptyBuild
  readonly entries: RecordedEvent[] = []

  constructor(apprentice: boolean) {
    const begun = startBuild(skerry, { ...newBuild, apprentice })
    if (!begun.ok) throw new Error(sentenceOf(begun.problem))
    this.#add(begun.value)
  }

  does(command: BuildCommand): string {
    const decided = decide(skerry, this.state, command)
    if (!decided.ok) return sentenceOf(decided.problem)
    for (const event of decided.value) this.#add(event)
    return 'done'
  }

  #add(event: RecordedEvent['event']): void {
    const seq = this.state.seq + 1
    this.entries.push({ seq, at: '2026-03-02T07:30:00.000Z', person: 'Ada', event, hash: '0'.repeat(64) })
    this.state = evolve(this.state, { seq, event })
  }

  confirms(step: string, second = 'Berit'): string {
    return this.does({ type: 'confirm-step', step, second })
  }

  /** Works on until somebody else is wanted or the build is finished. */
  worksOn(): string | null {
    for (;;) {
      const waiting = skerry.steps.find((step) => awaitsSecondPerson(skerry, this.state, step))
      if (waiting !== undefined) return waiting.id
      if (this.state.finished) return null
      this.does(nextCommand(skerry, this.state))
    }
  }
}

describe('an apprentice’s build', () => {
  it('has the two steps in it, or this would test nothing', () => {
    expect(steps).toHaveLength(2)
  })

  it('stops at a step that a second person must look at, and goes on when one has', () => {
    const bench = new Bench(true)
    const [first, second] = steps
    expect(bench.worksOn()).toBe(first?.id)
    bench.does({ type: 'note-marks', step: 'crank-marks', typed: 'F G G H' })
    expect(bench.does({ type: 'choose-shells', step: 'choose-mains', others: [] })).toContain('second person')
    expect(bench.confirms(first?.id ?? '')).toBe('done')
    expect(bench.worksOn()).toBe(second?.id)
    bench.confirms(second?.id ?? '')
    expect(bench.worksOn()).toBeNull()
    expect(bench.state.finished).toBe(true)
  })

  it('has on its sheet who looked at which step', () => {
    const bench = new Bench(true)
    for (let step = bench.worksOn(); step !== null; step = bench.worksOn()) bench.confirms(step)
    const sheet = buildSheet(skerry, bench.entries)
    expect(sheet.apprentice).toBe(true)
    expect(sheet.steps.filter(({ second }) => second !== null)).toMatchObject(
      marked.map((name) => ({ name, second: 'Berit', done: { person: 'Ada' } })),
    )
  })

  it('wants the look again when the step is worked on again', () => {
    const bench = new Bench(true)
    const step = bench.worksOn() ?? ''
    bench.confirms(step)
    bench.does({ type: 'note-marks', step, typed: '2 2 2 2' })
    expect(bench.worksOn()).toBe(step)
  })

  it('wants the look at bolts again when a pull is taken back', () => {
    const bench = new Bench(true)
    bench.confirms(bench.worksOn() ?? '')
    const bolts = bench.worksOn() ?? ''
    const procedure = steps[1]?.kind === 'run-procedure' ? steps[1].procedure : ''
    bench.confirms(bolts)
    const pull = bench.state.runs[procedure]?.pulls.length ?? 0
    expect(bench.does({ type: 'take-back', procedure, pull, reason: 'Handle slipped' })).toBe('done')
    expect(bench.state.confirmed[bolts]).toBeUndefined()
  })

  it('takes no look at what is not done, not marked, or looked at already', () => {
    const bench = new Bench(true)
    const [first, second] = steps.map(({ id }) => id)
    expect(bench.confirms(first ?? '')).toContain('does not wait')
    expect(bench.confirms('no-such-step')).toContain('no such step')
    bench.worksOn()
    expect(bench.confirms(first ?? '', '  ')).toContain('Nobody is named')
    bench.confirms(first ?? '')
    expect(bench.confirms(first ?? '')).toContain('does not wait')
    expect(bench.confirms(second ?? '')).toContain('does not wait')
  })
})

describe('a mechanic’s build', () => {
  it('never waits for a second person', () => {
    const bench = new Bench(false)
    expect(bench.worksOn()).toBeNull()
    expect(buildSheet(skerry, bench.entries)).toMatchObject({ apprentice: false })
  })
})
