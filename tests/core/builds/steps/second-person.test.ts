import { describe, expect, it } from 'vitest'
import {
  awaitsSecondPerson,
  buildSheet,
  checkRules,
  currentStep,
  decide,
  emptyBuild,
  evolve,
  handsIn,
  startBuild,
  stepStates,
  type BuildCommand,
  type BuildState,
  type RecordedEvent,
} from '../../../../core/builds/index.ts'
import { sentenceOf } from '../../../../core/problem/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { nextCommand } from '../next-command.ts'
import { demoEngine, newBuild } from '../workshop.ts'

const marked = ['Choose mains', 'Rod bolts', 'Turn crank']

const skerry: EngineSpec = demoEngine('skerry-3')
const steps = skerry.steps.filter(({ secondPerson }) => secondPerson !== undefined)

class Bench {
  state: BuildState = emptyBuild
  readonly entries: RecordedEvent[] = []

  constructor(apprentice: boolean) {
    const begun = startBuild(skerry, { ...newBuild, apprentice })
    if (!begun.ok) throw new Error(sentenceOf(begun.problem))
    this.#add(begun.value)
  }

  does(command: BuildCommand, person = 'Ada'): string {
    const decided = decide(skerry, this.state, command, null)
    if (!decided.ok) return sentenceOf(decided.problem)
    for (const event of decided.value) this.#add(event, person)
    return 'done'
  }

  #add(event: RecordedEvent['event'], person = 'Ada'): void {
    const seq = this.state.seq + 1
    const entry = { seq, at: '2026-03-02T07:30:00.000Z', person, event, hash: '0'.repeat(64) }
    this.entries.push(entry)
    this.state = evolve(this.state, entry)
  }

  confirms(step: string, second = 'Berit'): string {
    return this.does({ type: 'confirm-step', step, second })
  }

  sendsBack(step: string, reason: string): string {
    return this.does({ type: 'send-back-step', step, second: 'Berit', reason })
  }

  /** How the step stands in the list of steps. */
  stateOf(step: string): string | undefined {
    return stepStates(skerry, this.state).find((each) => each.step.id === step)?.state
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
  it('has three steps to be looked at, or this would test nothing', () => {
    expect(steps.map(({ name }) => name)).toEqual(marked)
  })

  it('stops at a step that a second person must look at, and goes on when one has', () => {
    const bench = new Bench(true)
    for (const { id } of steps) {
      expect(bench.worksOn()).toBe(id)
      expect(bench.stateOf(id)).toBe('unconfirmed')
      expect(bench.confirms(id)).toBe('done')
      expect(bench.stateOf(id)).toBe('done')
    }
    expect(bench.worksOn()).toBeNull()
    expect(bench.state.finished).toBe(true)
  })

  it('takes nothing that comes after it meanwhile', () => {
    const bench = new Bench(true)
    bench.worksOn()
    const half = { position: 'M1', half: 'upper' } as const
    expect(bench.does({ type: 'fit-half', step: 'fit-mains', ...half })).toBe(
      '“Choose mains” waits for a second person to look at it. Call one over; then continue.',
    )
  })

  it('is continued where nothing waits for the look, before the look is asked for again', () => {
    const bench = new Bench(true)
    bench.worksOn()
    expect(currentStep(skerry, bench.state)?.name).toBe('Choose mains')
    expect(bench.does({ type: 'note-marks', step: 'rod-marks', typed: '5 4 5' })).toBe('done')
    expect(currentStep(skerry, bench.state)?.name).toBe('Choose big ends')
  })

  it('has on its sheet who did which step and who looked at it', () => {
    const bench = new Bench(true)
    for (let step = bench.worksOn(); step !== null; step = bench.worksOn()) bench.confirms(step)
    const sheet = buildSheet(skerry, bench.entries)
    expect(sheet.apprentice).toBe(true)
    expect(sheet.steps.filter(({ second }) => second !== null)).toMatchObject(
      marked.map((name) => ({ name, second: { person: 'Berit' }, done: { person: 'Ada' } })),
    )
  })

  it('has on its sheet what still waits', () => {
    const bench = new Bench(true)
    bench.worksOn()
    const waiting = buildSheet(skerry, bench.entries).steps.filter(({ unconfirmed }) => unconfirmed)
    expect(waiting).toMatchObject([{ name: 'Choose mains', second: null, done: { person: 'Ada' } }])
  })

  it('wants the look again when the step is worked on again', () => {
    const bench = new Bench(true)
    const step = bench.worksOn() ?? ''
    bench.confirms(step)
    bench.does({ type: 'choose-shells', step, others: [] })
    expect(bench.worksOn()).toBe(step)
  })

  it('wants the look at bolts again when a pull is taken back', () => {
    const { bench, bolts, procedure } = atTheBolts()
    bench.confirms(bolts)
    const pull = bench.state.runs[procedure]?.pulls.length ?? 0
    expect(
      bench.does({ type: 'take-back', procedure, pull, notTurned: true, reason: 'Pressed too early' }),
    ).toBe('done')
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

/** An apprentice's build in which the rod bolts are done and wait for the look. */
function atTheBolts() {
  const bench = new Bench(true)
  bench.confirms(bench.worksOn() ?? '')
  const bolts = bench.worksOn() ?? ''
  const step = steps.find(({ id }) => id === bolts)!
  return { bench, bolts, step, procedure: step.kind === 'run-procedure' ? step.procedure : '' }
}

describe('a step sent back', () => {
  it('waits on, with the reason, until something is done in it', () => {
    const bench = new Bench(true)
    const step = bench.worksOn() ?? ''
    expect(bench.sendsBack(step, 'M2 is misread')).toBe('done')
    expect(bench.stateOf(step)).toBe('unconfirmed')
    expect(bench.state.sentBack[step]).toEqual({ second: 'Berit', procedure: null, reason: 'M2 is misread' })
    bench.does({ type: 'choose-shells', step, others: [] })
    expect(bench.state.sentBack).toEqual({})
  })

  it('can be found right after all', () => {
    const { bench, bolts } = atTheBolts()
    bench.sendsBack(bolts, 'Bolt 3 looks dry')
    expect(bench.confirms(bolts)).toBe('done')
    expect(bench.state.sentBack).toEqual({})
  })

  it('is not sent back without a reason', () => {
    const bench = new Bench(true)
    expect(bench.sendsBack(bench.worksOn() ?? '', '?')).toContain('“Choose mains” is to be done again')
  })

  it('stands among the corrections on the sheet', () => {
    const { bench, bolts } = atTheBolts()
    bench.sendsBack(bolts, 'Bolt 3 looks dry')
    expect(buildSheet(skerry, bench.entries).corrections).toMatchObject([
      {
        kind: 'step-sent-back',
        about: { code: 'stepBy', facts: { step: 'Rod bolts', person: 'Berit' } },
        reason: 'Bolt 3 looks dry',
      },
    ])
  })
})

describe('the hands in a step', () => {
  it('are those of everybody whose pull stands', () => {
    const { bench, step, procedure } = atTheBolts()
    const last = bench.state.runs[procedure]?.pulls.length ?? 0
    bench.does(
      { type: 'take-back', procedure, pull: last, notTurned: true, reason: 'Pressed too early' },
      'Berit',
    )
    expect(handsIn(skerry, bench.entries, step)).toEqual(['Ada'])
    bench.does(nextCommand(skerry, bench.state), 'Cai')
    expect(handsIn(skerry, bench.entries, step)).toEqual(['Ada', 'Cai'])
  })

  it('are not those of who showed it and took it all back', () => {
    const bench = new Bench(true)
    bench.confirms(bench.worksOn() ?? '')
    const step = steps.find(({ name }) => name === 'Rod bolts')!
    const procedure = step.kind === 'run-procedure' ? step.procedure : ''
    while (bench.state.runs[procedure]?.pulls.length !== 1)
      bench.does(nextCommand(skerry, bench.state), 'Berit')
    bench.does({ type: 'take-back', procedure, pull: 1, reason: 'That was to show it' }, 'Berit')
    bench.worksOn()
    expect(handsIn(skerry, bench.entries, step)).toEqual(['Ada'])
  })

  it('are found in one look at each entry, however often the work was sent back', () => {
    const { bench, bolts, step, procedure } = atTheBolts()
    for (let round = 0; round < 20; round += 1) {
      const last = bench.state.runs[procedure]?.pulls.length ?? 0
      expect(bench.sendsBack(bolts, `Bolt 3 looks dry, look ${round}`)).toBe('done')
      bench.does({ type: 'take-back', procedure, pull: last, notTurned: true, reason: 'Pressed too early' })
      bench.does(nextCommand(skerry, bench.state), round % 2 === 0 ? 'Cai' : 'Ada')
    }
    let looks = 0
    const counted = bench.entries.map((entry) => ({
      ...entry,
      get event() {
        looks += 1
        return entry.event
      },
    }))
    expect(handsIn(skerry, counted, step)).toEqual(['Ada', 'Cai'])
    expect(looks).toBeLessThanOrEqual(3 * counted.length)
    looks = 0
    const checking = checkRules(skerry, newBuild.specSha256, counted)
    for (let now = checking.next(); ; now = checking.next())
      if (now.done === true) {
        expect(now.value).toBeNull()
        break
      }
    // Each step of the spec asks whether the entry is work of its own, and the rules look at it up to five times.
    expect(looks).toBeLessThanOrEqual((skerry.steps.length + 5) * counted.length)
  })

  it('are nobody’s while nothing is done', () => {
    expect(handsIn(skerry, new Bench(true).entries, steps[0]!)).toEqual([])
  })
})

describe('a mechanic’s build', () => {
  it('never waits for a second person', () => {
    const bench = new Bench(false)
    expect(bench.worksOn()).toBeNull()
    expect(buildSheet(skerry, bench.entries)).toMatchObject({ apprentice: false })
  })
})
