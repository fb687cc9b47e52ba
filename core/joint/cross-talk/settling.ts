import { addBeamForces, bendingOf, freedoms, type Bending } from './beam.ts'
import { CondensedNetwork } from './condensed.ts'
import type { Flange } from './flange.ts'
import { along, padsOf, pullersOf, push, squeezed, type OneWayContact } from './one-way.ts'

/**
 * What is left of a spring that does not act, in the equations for a step only: it keeps a part that nothing
 * holds from being carried off. Forces are never calculated with it, so that it has no share in the result.
 */
const holding = 1e-9
/**
 * At rest is when the next step would win no more than this share of the most energy that the springs have
 * held (loads are then right to a share of 1e-11), or would move nothing by more than this share of the
 * largest deflection there was. The first tells of a part that floats, and may drift; the second of beams so
 * stiff that rounding is felt in them. Where neither comes to pass within `steps`, rounding is in the way,
 * and loads right to 1e-6 must do.
 */
const settled = { energy: 1e-22, step: 1e-12, steps: 200, energyLater: 1e-12 }
/**
 * A handful are enough as a rule; thousands are needed where a part that one bolt holds rolls off its bed,
 * pad by pad.
 */
const mostSteps = 20_000

/** A one-way spring whose start moves, and whether it acted in the last equations. */
interface Spring extends OneWayContact {
  start: number
  acts: boolean
}

/**
 * A flange that comes to rest again each time a bolt is set, by Newton's method on the energy of beams, pads
 * and bolts. That is convex and made of parabolas: the springs that act tell the next step, which ends where
 * the energy would rise again.
 */
export class SettlingFlange {
  readonly #network: CondensedNetwork
  readonly #beams: readonly Bending[]
  readonly #springs: readonly Spring[]
  readonly #bolts: readonly Spring[]
  readonly #springsAt: readonly (readonly Spring[])[]
  /** By how many mm each spring is squeezed, below 0 for those that do not touch. */
  readonly #squeezes: Float64Array
  readonly #weights: Float64Array
  readonly #deflections: Float64Array
  #mostEnergy = 0
  #mostDeflection = 0

  /** At rest under its own weight, every bolt run down until it just touches. */
  constructor(flange: Flange) {
    const count = flange.nodes.length
    const springOf = (spring: OneWayContact): Spring => ({ ...spring, acts: false })
    this.#network = new CondensedNetwork(flange)
    this.#beams = flange.beams.map((beam) => bendingOf(flange, beam))
    this.#bolts = pullersOf(flange).map(springOf)
    this.#springs = [...padsOf(flange).map(springOf), ...this.#bolts]
    const springsAt: Spring[][] = flange.nodes.map(() => [])
    for (const spring of this.#springs) springsAt[spring.node]!.push(spring)
    this.#springsAt = springsAt
    this.#squeezes = new Float64Array(this.#springs.length)
    this.#weights = new Float64Array(freedoms * count)
    this.#deflections = new Float64Array(freedoms * count)
    flange.nodes.forEach(({ weightN = 0 }, node) => {
      this.#weights[freedoms * node] = weightN
      this.#hold(node)
    })
    this.#settle(this.#weights)
    for (const bolt of this.#bolts) bolt.start = this.#down(bolt.node)
  }

  /** How far each node is pressed down, in mm; below 0 where the face is open by so much. */
  sinkMm(): readonly number[] {
    return this.#springsAt.map((_, node) => this.#down(node))
  }

  /** What each bolt pulls with, in N. */
  loads(): readonly number[] {
    return this.#bolts.map((bolt) => bolt.stiffness * Math.max(0, squeezed(bolt, this.#deflections)))
  }

  /** Turns a bolt until it pulls with so many newtons (0 or more): on, or back where it pulls with more. */
  set(bolt: number, newtons: number): void {
    const set = this.#bolts[bolt]!
    const forces = this.#weights.slice()
    push(set, -newtons, forces)
    set.start = -Infinity
    this.#settle(forces)
    set.start = this.#down(set.node) + newtons / set.stiffness
  }

  /** Turns a nut down by so many mm (0 or more) from where it is; one that is off, from where it touches. */
  turn(bolt: number, mm: number): void {
    const turned = this.#bolts[bolt]!
    if (turned.start === -Infinity) turned.start = this.#down(turned.node)
    turned.start += mm
    this.#settle(this.#weights)
  }

  /** Turns a nut off. */
  release(bolt: number): void {
    this.#bolts[bolt]!.start = -Infinity
    this.#settle(this.#weights)
  }

  #down(node: number): number {
    return this.#deflections[freedoms * node]!
  }

  /** Moves from where the flange is to where it is at rest under some forces. */
  #settle(forces: Float64Array): void {
    for (let steps = 0; steps < mostSteps; steps += 1) {
      this.#chooseActing()
      const missingOfBeams = this.#missingOfBeams(forces)
      const missing = this.#missing(missingOfBeams)
      const step = missing.slice()
      this.#network.solve(step)
      const last = this.#isLast(steps, step, dot(step, missing))
      const share = last ? 1 : this.#downhill(step, missingOfBeams)
      for (let freedom = 0; freedom < step.length; freedom += 1)
        this.#deflections[freedom]! += share * step[freedom]!
      if (last) return
    }
    throw new Error('a flange does not come to rest')
  }

  /**
   * Whether a step, the so-many-th, that would win so much energy (twice, in N·mm), is the last that is worth
   * its while.
   */
  #isLast(steps: number, step: Float64Array, energy: number): boolean {
    this.#mostEnergy = Math.max(this.#mostEnergy, this.#energyOfSprings())
    this.#mostDeflection = Math.max(this.#mostDeflection, largestOf(this.#deflections))
    const energyShare = steps < settled.steps ? settled.energy : settled.energyLater
    return energy <= energyShare * this.#mostEnergy || largestOf(step) <= settled.step * this.#mostDeflection
  }

  /** Twice the energy, in N·mm. */
  #energyOfSprings(): number {
    let energy = 0
    this.#springs.forEach(({ stiffness }, place) => {
      const squeeze = this.#squeezes[place]!
      if (squeeze > 0) energy += stiffness * squeeze ** 2
    })
    return energy
  }

  /** Lets those springs act that touch, and holds their nodes accordingly. */
  #chooseActing(): void {
    const changed = new Set<number>()
    this.#springs.forEach((spring, place) => {
      const squeeze = squeezed(spring, this.#deflections)
      this.#squeezes[place] = squeeze
      const acts = squeeze >= 0
      if (acts === spring.acts) return
      spring.acts = acts
      changed.add(spring.node)
    })
    for (const node of changed) this.#hold(node)
  }

  #hold(node: number): void {
    const stiffness = new Float64Array(freedoms ** 2)
    for (const { squeeze, stiffness: full, acts, start } of this.#springsAt[node]!) {
      const holdingStiffness = acts ? full : start === -Infinity ? 0 : holding * full
      for (let row = 0; row < freedoms; row += 1)
        for (let column = 0; column < freedoms; column += 1)
          stiffness[row * freedoms + column]! += holdingStiffness * squeeze[row]! * squeeze[column]!
    }
    this.#network.setSprings(node, stiffness)
  }

  /** The forces that nothing answers yet: those from outside less those of the beams. */
  #missingOfBeams(forces: Float64Array): Float64Array {
    const missing = new Float64Array(forces.length)
    for (const beam of this.#beams) addBeamForces(beam, this.#deflections, missing)
    for (let freedom = 0; freedom < missing.length; freedom += 1)
      missing[freedom] = forces[freedom]! - missing[freedom]!
    return missing
  }

  /** The same less those of the springs as well. */
  #missing(ofBeams: Float64Array): Float64Array {
    const missing = ofBeams.slice()
    this.#springs.forEach((spring, place) => {
      const squeeze = this.#squeezes[place]!
      if (squeeze > 0) push(spring, -spring.stiffness * squeeze, missing)
    })
    return missing
  }

  /** The share of a step, up to 1, along which the energy falls. */
  #downhill(step: Float64Array, missingOfBeams: Float64Array): number {
    const stepForces = new Float64Array(step.length)
    for (const beam of this.#beams) addBeamForces(beam, step, stepForces)
    const falling = dot(step, missingOfBeams)
    const rising = dot(step, stepForces)
    const springs = this.#springs
    const by = Float64Array.from(springs, (spring) => along(spring, step))
    return lowestOf((share) => {
      let slope = share * rising - falling
      for (let place = 0; place < by.length; place += 1) {
        const squeeze = this.#squeezes[place]! + share * by[place]!
        if (squeeze > 0) slope += springs[place]!.stiffness * squeeze * by[place]!
      }
      return slope
    })
  }
}

/** How often a share of a step is halved until the energy falls along all of it, and then narrowed down. */
const halvings = { until: 100, within: 20 }

/** Where a slope that only ever grows from 0 to 1 turns upwards, found from below; 1 when it does not. */
function lowestOf(slopeAt: (share: number) => number): number {
  if (slopeAt(1) <= 1e-6 * -slopeAt(0)) return 1
  let low = 0.5
  for (let halving = 0; halving < halvings.until && slopeAt(low) > 0; halving += 1) low /= 2
  let high = 2 * low
  for (let halving = 0; halving < halvings.within; halving += 1) {
    const middle = (low + high) / 2
    if (slopeAt(middle) <= 0) low = middle
    else high = middle
  }
  return low
}

function dot(one: Float64Array, other: Float64Array): number {
  let total = 0
  for (let index = 0; index < one.length; index += 1) total += one[index]! * other[index]!
  return total
}

/** The largest deflection of any node, slopes not counted. */
function largestOf(deflections: Float64Array): number {
  let largestSoFar = 0
  for (let at = 0; at < deflections.length; at += freedoms)
    largestSoFar = Math.max(largestSoFar, Math.abs(deflections[at]!))
  return largestSoFar
}
