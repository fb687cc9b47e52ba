import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkProperty } from '../../property.ts'
import { engineSpec, type EngineSpec } from '../../../core/engine/index.ts'
import {
  isRunDone,
  isUsedUp,
  lastLivePull,
  openFlags,
  restartPoints,
  wayOut,
  windowNow,
  windowOf,
  type Flag,
  type HeldWrench,
  type PlannedPull,
} from '../../../core/tightening/index.ts'
import { Bench, pull } from './bench.ts'
import { winchEngine } from './winch-engine.ts'

/** One bolt of steel: what was done to it, whatever the record says. */
interface Bolt {
  torque: number
  /** By pass, in degrees, since it was last loose. */
  readonly turned: Map<number, number>
  /** Whether it went past the most of some pass and was not put right since. */
  past: boolean
  tightened: boolean
}

const newBolt = (): Bolt => ({ torque: 0, turned: new Map(), past: false, tightened: false })

/** What a hand does at one pull: how far off it is, whether a digit slips when the reading is typed, what happens besides. */
interface Hand {
  readonly off: number
  readonly typo: boolean
  readonly reads: boolean
  readonly adapter: boolean
  readonly besides: 'nothing' | 'presses too early' | 'takes back' | 'loosens' | 'begins again'
}

const hand: fc.Arbitrary<Hand> = fc.record({
  off: fc.oneof(
    fc.constant(0),
    fc.integer({ min: -60, max: 60 }).map((percent) => percent / 100),
  ),
  typo: fc.oneof(fc.constant(false), fc.constant(false), fc.boolean()),
  reads: fc.oneof(fc.constant(true), fc.constant(true), fc.boolean()),
  adapter: fc.boolean(),
  besides: fc.oneof(
    { weight: 6, arbitrary: fc.constant('nothing' as const) },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        'presses too early' as const,
        'takes back' as const,
        'loosens' as const,
        'begins again' as const,
      ),
    },
  ),
})

/** A procedure over two bolts: torques that rise, then turns, with or without a recheck and loosening half way. */
const spec: fc.Arbitrary<EngineSpec> = fc
  .record({
    torques: fc.array(fc.integer({ min: 5, max: 60 }), { minLength: 1, maxLength: 3 }),
    angles: fc.array(fc.integer({ min: 20, max: 120 }), { maxLength: 3 }),
    tolerance: fc.constantFrom(0.02, 0.05, 0.1),
    loosen: fc.boolean(),
    reuse: fc.constantFrom('reusable' as const, 'reusable' as const, 'new-each-time' as const),
    pastMost: fc.constantFrom(undefined, 'replace' as const, 'begin-again' as const, 'begin-again' as const),
  })
  .map(({ torques, angles, tolerance, loosen, reuse, pastMost }) => {
    const rising = torques.toSorted((a, b) => a - b)
    const limits = (target: number, unit: string) => ({
      target: `${target} ${unit}`,
      least: `${target * (1 - tolerance)} ${unit}`,
      most: `${target * (1 + tolerance)} ${unit}`,
    })
    const torque = (target: number) => ({ kind: 'torque', order: 'pair', ...limits(target, 'N·m') })
    const passes = [
      ...rising.map(torque),
      ...(loosen ? [{ kind: 'loosen', order: 'pair' }, torque(rising[0]!)] : []),
      ...angles.map((target) => ({ kind: 'angle', order: 'pair', ...limits(target, '°') })),
    ]
    const procedures = engineSpec.shape.procedures.parse([
      {
        id: 'rods',
        name: 'Rod bolts',
        face: 'rods',
        orders: [{ id: 'pair', sequence: ['rod-1', 'rod-2'] }],
        passes,
      },
    ])
    const fastenerGroups = winchEngine.fastenerGroups.map((group) =>
      group.id === 'rod-bolts' ? { ...group, reuse, pastMost } : group,
    )
    return { ...winchEngine, procedures, fastenerGroups }
  })

/** A 12 in wrench with a 4 in adapter straight on: the fastener has 4/3 of what its scale shows. */
const withAdapter: HeldWrench = {
  wrench: 'Click',
  length_nm: 304_800_000,
  adapter: { name: 'Foot', offset_nm: 101_600_000, angle_deg: 0 },
}

/** How often each thing was come to: a property that reaches nothing shows nothing. */
const reached = { exact: 0, done: 0, replaced: 0, begunAgain: 0, turnedOn: 0, readAgain: 0 }

/** Somebody at the bench who does to the letter what the program says, as well as the hands allow. */
class Follower {
  readonly bench: Bench
  readonly bolts = new Map<string, Bolt>()
  /** What a pull showed in truth, where something else was typed. */
  readonly truth = new Map<number, string>()

  constructor(spec: EngineSpec) {
    this.bench = Bench.started('rods', spec)
    for (const id of ['rod-1', 'rod-2']) this.bolts.set(id, newBolt())
  }

  /** One thing that the program asks for; false when nothing is asked any more. */
  goesOn(by: Hand): boolean {
    const { bench } = this
    const run = bench.run!
    const fresh = bench.singleUseGroups().find(({ id }) => !run.declaredNew.includes(id))
    if (fresh !== undefined) {
      bench.does({ type: 'declare-new', group: fresh.id })
      for (const id of this.bolts.keys()) this.bolts.set(id, newBolt())
      return true
    }
    const [flag] = openFlags(run)
    if (flag !== undefined) {
      this.settles(flag, by)
      return true
    }
    if (isRunDone(bench.procedure, run)) return false
    if (this.doesBesides(by)) return true
    this.pulls(bench.next!, by)
    return true
  }

  settles(flag: Flag, by: Hand): void {
    const { bench } = this
    const truth = flag.pull === null ? undefined : this.truth.get(flag.pull)
    if (flag.pull !== null && truth !== undefined) {
      this.truth.delete(flag.pull)
      const unit = bench.run!.pulls.find(({ number }) => number === flag.pull)!.reading!.unit
      bench.does({
        type: 'read-again',
        pull: flag.pull,
        reading: { typed: truth, unit },
        reason: 'Digit slipped',
      })
      reached.readAgain += 1
      return
    }
    const fastener = flag.fastener!
    switch (wayOut(bench.spec, bench.procedure, bench.run!, flag)) {
      case 'replace':
        if (!bench.run!.loosened.includes(fastener)) this.loosens(fastener)
        else this.replaces(fastener)
        return
      case 'begin-again':
        this.loosens(fastener)
        this.bolts.get(fastener)!.past = false
        reached.begunAgain += 1
        return
      case 'turn-on': {
        const { pass } = bench.run!.pulls.find(({ number }) => number === flag.pull)!
        reached.turnedOn += 1
        this.pulls({ pass, fastener }, { ...by, reads: true })
        return
      }
      case 'say': {
        // Too little torque: taken back and pulled again where it is the last pull, else answered for.
        const last = lastLivePull(bench.run)
        if (last?.number === flag.pull)
          bench.does({ type: 'take-back', pull: last.number, reason: 'Too little' })
        else bench.does({ type: 'answer-flag', flag: flag.number, answer: 'Pulled again until it clicked' })
      }
    }
  }

  pulls(planned: PlannedPull, by: Hand): void {
    const { bench } = this
    const fastener = planned.fastener!
    if (isUsedUp(bench.spec, bench.procedure, bench.run!, fastener)) return this.replaces(fastener)
    const bolt = this.bolts.get(fastener)!
    const pass = bench.procedure.passes[planned.pass]!
    const window = windowNow(bench.procedure, bench.run, planned)
    if (pass.kind === 'loosen') {
      this.bolts.set(fastener, { ...newBolt(), past: bolt.past, tightened: true })
      bench.does(pull(planned))
      return
    }
    if (window === null || !('target' in window)) throw new Error('nothing to reach')
    const asked = window.target * (1 + by.off)
    const whole = windowOf(pass, fastener) as typeof window
    bolt.tightened = true
    let came: number
    if (window.kind === 'angle') {
      came = (bolt.turned.get(planned.pass) ?? 0) + asked
      bolt.turned.set(planned.pass, came)
    } else {
      bolt.torque = Math.max(bolt.torque, asked)
      came = asked
    }
    // A steady hand on a bolt that is not past its most: what is asked must not take it there, short or not before.
    if (by.off === 0 && !bolt.past) {
      reached.exact += 1
      expect(came, `${window.kind}, pass ${planned.pass + 1}`).toBeLessThanOrEqual(whole.most * (1 + 1e-9))
    }
    if (came > whole.most * (1 + 1e-9)) bolt.past = true
    // Who is off knows it from the scale; the click or the mark alone says that it is as asked.
    const reads = by.reads || by.off !== 0
    const share = by.adapter && window.kind === 'torque' ? 3 / 4 : 1
    const read = String(asked * share)
    const typed = by.typo ? String(asked * share * 10) : read
    const unit = window.kind === 'angle' ? '°' : 'N·m'
    bench.does({
      ...pull(planned, reads ? [typed, unit] : null),
      ...(share !== 1 && { held: withAdapter }),
    })
    if (reads && by.typo) this.truth.set(bench.run!.pulls.length, read)
  }

  /** What happens at a bench besides; true where it took the place of the pull. */
  doesBesides({ besides }: Hand): boolean {
    const { bench } = this
    const last = lastLivePull(bench.run)
    if (besides === 'nothing' || last === null || last.fastener === null) return false
    const kind = bench.procedure.passes[last.pass]!.kind
    switch (besides) {
      case 'presses too early': {
        const next = bench.next!
        if (bench.procedure.passes[next.pass]!.kind !== 'angle') return false
        if (isUsedUp(bench.spec, bench.procedure, bench.run!, next.fastener!)) return false
        bench.does(pull(next))
        bench.does({
          type: 'take-back',
          pull: bench.run!.pulls.length,
          notTurned: true,
          reason: 'Pressed too early',
        })
        return true
      }
      case 'takes back':
        if (kind === 'angle') {
          expect(bench.refuses({ type: 'take-back', pull: last.number, reason: 'Not sure' })).toContain(
            'loosen it and begin it again',
          )
          this.loosens(last.fastener)
        } else if (kind === 'torque') bench.does({ type: 'take-back', pull: last.number, reason: 'Not sure' })
        else return false
        return true
      case 'loosens':
        this.loosens(last.fastener)
        return true
      case 'begins again':
        if (!restartPoints(bench.procedure, bench.run!).includes(0)) return false
        for (const id of this.bolts.keys()) this.isLoose(id)
        bench.does({ type: 'restart-run', pass: 0, reason: 'Broken off' })
        return true
    }
  }

  loosens(fastener: string): void {
    this.bench.does({ type: 'loosen-fastener', fastener, reason: 'To begin again' })
    this.isLoose(fastener)
  }

  isLoose(fastener: string): void {
    const { past, tightened } = this.bolts.get(fastener)!
    this.bolts.set(fastener, { ...newBolt(), past, tightened })
  }

  replaces(fastener: string): void {
    this.bench.does({ type: 'replace-fastener', fastener })
    this.bolts.set(fastener, newBolt())
    reached.replaced += 1
  }
}

describe('the program’s advice, followed to the letter', () => {
  it('never takes a bolt past the most of its spec, and leaves none there that went past by hand', () => {
    checkProperty(
      fc.property(spec, fc.array(hand, { minLength: 10, maxLength: 40 }), (engine, hands) => {
        const follower = new Follower(engine)
        let goesOn = true
        for (const each of hands) goesOn = goesOn && follower.goesOn(each)
        // Then steady hands bring it to its end.
        const steady: Hand = { off: 0, typo: false, reads: true, adapter: false, besides: 'nothing' }
        for (let steps = 0; goesOn && steps < 200; steps += 1) goesOn = follower.goesOn(steady)
        expect(goesOn).toBe(false)
        expect([...follower.bolts.values()].map(({ past }) => past)).toEqual([false, false])
        reached.done += 1
      }),
      { numRuns: 400 },
    )
    for (const [what, count] of Object.entries(reached)) expect(count, what).toBeGreaterThan(20)
  })
})
