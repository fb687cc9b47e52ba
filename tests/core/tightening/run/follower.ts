import { expect } from 'vitest'
import {
  isRunDone,
  isUsedUp,
  lastLivePull,
  openFlags,
  prevailingIn,
  restartPoints,
  remedyOf,
  windowNow,
  windowOf,
  type Flag,
  type PlannedPull,
} from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'
import { measuresFree, stretches } from './bolt-by-stretch.ts'
import { CrankOnBench } from './crank-on-bench.ts'
import { reached, runsDown } from './nut-on-bench.ts'
import { loose, newBolt, type Bolt } from './steel-bolt.ts'
import { asItShouldBe, seconds, withAdapter, type Hand, type Work } from './work-and-hands.ts'

/** Somebody at the bench who does to the letter what the program says, as well as the hands allow. */
export class Follower {
  readonly bench: Bench
  readonly bolts = new Map<string, Bolt>()
  /** What a pull showed in truth, where something else was typed. */
  readonly truth = new Map<number, string>()

  readonly #nuts: readonly number[]
  #taken = 0
  readonly #crank: CrankOnBench

  constructor({ engine, bolts, nuts }: Work) {
    this.bench = Bench.started('rods', engine)
    this.#nuts = nuts
    this.#crank = new CrankOnBench(this.bench)
    bolts.forEach((mmPerTorque, index) =>
      this.bolts.set(`rod-${index + 1}`, newBolt(this.#nextNut(), mmPerTorque)),
    )
  }

  #nextNut(): number {
    this.#taken += 1
    return this.#nuts[this.#taken % this.#nuts.length]!
  }

  /** One thing that the program asks for; false when nothing is asked any more. */
  goesOn(by: Hand): boolean {
    const { bench } = this
    const run = bench.run!
    const fresh = bench.singleUseGroups().find(({ id }) => !run.declaredNew.includes(id))
    if (fresh !== undefined) {
      bench.does({ type: 'declare-new', group: fresh.id })
      for (const id of this.bolts.keys()) this.bolts.set(id, newBolt(this.#nextNut()))
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
      const { unit } = bench.run!.pulls.find(({ number }) => number === flag.pull)!.reading!
      bench.does({
        type: 'read-again',
        pull: flag.pull,
        reading: { typed: truth, unit },
        reason: 'Digit slipped',
      })
      reached.readAgain += 1
      return
    }
    if (flag.fastener === null) return this.#crank.loosensCap(flag).forEach((each) => this.isLoose(each))
    const { fastener } = flag
    switch (remedyOf(bench.spec, bench.procedure, bench.run!, flag)) {
      case 'replace':
        if (!bench.run!.loosened.includes(fastener)) this.loosens(fastener)
        else this.replaces(fastener)
        return
      case 'begin-again': {
        this.loosens(fastener)
        const bolt = this.bolts.get(fastener)!
        bolt.past = bolt.drawn
        // Its thread is cleaned and oiled as the spec says.
        bolt.mmPerTorque = asItShouldBe
        reached.begunAgain += 1
        return
      }
      case 'turn-on': {
        const { pass } = bench.run!.pulls.find(({ number }) => number === flag.pull)!
        reached[bench.procedure.passes[pass]!.kind === 'angle' ? 'turnedOn' : 'tightenedOn'] += 1
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
    const wanted = bench.procedure.passes[planned.pass]!
    if (wanted.kind === 'action' && wanted.turning !== undefined) return this.#crank.turns(planned, by)
    if (planned.fastener === null) return this.waits(planned, by)
    const { fastener } = planned
    if (isUsedUp(bench.spec, bench.procedure, bench.run!, fastener)) return this.replaces(fastener)
    const bolt = this.bolts.get(fastener)!
    const pass = bench.procedure.passes[planned.pass]!
    const window = windowNow(bench.procedure, bench.run, planned)
    if (pass.kind === 'loosen') {
      this.isLoose(fastener)
      bench.does(pull(planned))
      return
    }
    if (pass.kind === 'length') return measuresFree(bench, planned, by)
    if (pass.kind === 'tighten-to-stretch') {
      const slip = stretches(bench, bolt, planned, by)
      if (slip !== null) this.truth.set(slip.pull, slip.truth)
      return
    }
    const ran = runsDown(bench, bolt, planned, by)
    if (pass.kind === 'seat') {
      bench.does({ ...pull(planned), ...ran.said })
      return
    }
    if (window === null || !('target' in window)) throw new Error('nothing to reach')
    const target = (window.target + ran.onTop) * (1 + by.off)
    const whole = windowOf(pass, fastener) as typeof window
    bolt.tightened = true
    let came: number
    if (window.kind === 'angle') {
      came = (bolt.turned.get(planned.pass) ?? 0) + target
      bolt.turned.set(planned.pass, came)
    } else {
      // What runs the nut down does not clamp, and counts only where the spec's torque has it in it.
      came = target - ran.uncounted
      bolt.torque = Math.max(bolt.torque, target - bolt.runsDownAt)
      bolt.longer = bolt.torque * bolt.mmPerTorque
    }
    if (pass.step !== undefined) reached.inSteps += 1
    // A steady hand on a bolt that is not past its upper limit: what is asked must not take it there, short or not before.
    if (by.off === 0 && !bolt.past) {
      reached.exact += 1
      reached[pass.kind as 'torque' | 'angle' | 'recheck'] += 1
      if (by.adapter && pass.kind !== 'angle') reached.adapter += 1
      const nut = prevailingIn(bench.spec, pass, fastener)
      if (nut !== null) reached[nut.counts] += 1
      if (pass.kind === 'angle' && pass.inAll !== undefined) {
        reached.inAll += 1
        // Its limits in all are a share of all, so that what those before were off by, within theirs, is within these.
        const all = [...bolt.turned.values()].reduce((sum, each) => sum + each)
        const mostInAll = pass.inAll + whole.most - whole.target
        expect(all, `in all, pass ${planned.pass + 1}`).toBeLessThanOrEqual(mostInAll * (1 + 1e-9))
      }
      expect(came, `${window.kind}, pass ${planned.pass + 1}`).toBeLessThanOrEqual(whole.most * (1 + 1e-9))
    }
    if (came > whole.most * (1 + 1e-9)) bolt.past = true
    // Who is off knows it from the scale; the click or the mark alone says that it is as asked.
    const reads = by.reads || by.off !== 0
    const share = by.adapter && window.kind === 'torque' ? 3 / 4 : 1
    const read = String(target * share)
    const typed = by.typo ? String(target * share * 10) : read
    const unit = window.kind === 'angle' ? '°' : 'N·m'
    bench.does({
      ...pull(planned, reads ? [typed, unit] : null),
      ...ran.said,
      ...(share !== 1 && { held: withAdapter }),
    })
    if (reads && by.typo) this.truth.set(bench.run!.pulls.length, read)
  }

  /** Waits as long as the procedure says; who presses before that is refused, and waits on or says why not. */
  waits(planned: PlannedPull, { off }: Hand): void {
    const waited = seconds * (1 + off)
    const after = (at: number, shortened: string | null = null) =>
      pull(planned, null, { waited: { seconds: at, shortened } })
    if (waited >= seconds) {
      this.bench.does(after(waited))
      reached.waited += 1
      return
    }
    expect(this.bench.refuses(after(waited))).toContain('are left')
    reached.waitRefused += 1
    if (off < -0.1) {
      this.bench.does(after(waited, 'The gasket is of metal'))
      reached.waitShortened += 1
    } else this.bench.does(after(seconds))
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
    const bolt = this.bolts.get(fastener)!
    this.bolts.set(fastener, loose(bolt))
  }

  replaces(fastener: string): void {
    this.bench.does({ type: 'replace-fastener', fastener })
    this.bolts.set(fastener, newBolt(this.#nextNut()))
    reached.replaced += 1
  }
}
