import { newtons, type Force } from '../../quantity/index.ts'
import { lineOf, type Flange } from './flange.ts'
import { SettlingFlange } from './settling.ts'

/**
 * What is done to one bolt:
 * - `raise`: as a torque wrench does it, on to a load, 0 until it touches; a bolt that holds more already is
 *   left alone.
 * - `set`: to a load exactly, turned back where it holds more.
 * - `turn`: the nut comes down by so many mm, whatever the bolt then holds. One that is off is run down until
 *   it touches first.
 * - `release`: the nut comes off.
 */
export type FlangePull = { readonly pass: number; readonly bolt: string } & (
  | { readonly kind: 'raise'; readonly to: Force }
  | { readonly kind: 'set'; readonly to: Force }
  | { readonly kind: 'turn'; readonly byMm: number }
  | { readonly kind: 'release' }
)

/** How a flange lies. */
export interface ClampState {
  /** What each bolt holds, in the flange's order. */
  readonly loads: readonly Force[]
  /** How far each node is pressed into the bed, in mm; below 0 where the face is open by so much. */
  readonly sinkMm: readonly number[]
  /**
   * The share, 0 to 1, of the length of all beams on a bed along which the face is open by more than 1 µm.
   */
  readonly openShare: number
}

export interface ClampMap {
  /** With every nut run down by hand until it touches. */
  readonly atRest: ClampState
  /** After each pull, in the order in which they are made. */
  readonly afterPulls: readonly ClampState[]
  /** After the last pull of each pass, in the order in which they are made. */
  readonly afterPasses: readonly { readonly pass: number; readonly state: ClampState }[]
}

/**
 * From here on a face counts as open: what is less is lost in the finish of the faces. Common practice, no
 * source.
 */
const openFromMm = 0.001

/** A calculation that stops after each of its parts, so that a window can answer in between. It returns the result. */
export type InParts<Result> = Generator<undefined, Result, undefined>

/** Goes through all parts at once. */
export function atOnce<Result>(parts: InParts<Result>): Result {
  for (;;) {
    const part = parts.next()
    if (part.done === true) return part.value
  }
}

/**
 * Runs pulls through a flange, one after the other: what every bolt still holds, and where the face opens, after each
 * of them. Throws on a pull of a bolt that the flange has not, and when the flange tips over because a bolt pulls
 * beyond all that bears.
 */
export function clampMap(flange: Flange, pulls: readonly FlangePull[]): ClampMap {
  return atOnce(clampMapInParts(flange, pulls))
}

/** The same, one pull to each part. */
export function* clampMapInParts(flange: Flange, pulls: readonly FlangePull[]): InParts<ClampMap> {
  const settling = new SettlingFlange(flange)
  const bedMm = bedLengths(flange)
  const places = new Map(flange.bolts.map(({ id }, place) => [id, place]))
  const state = () => stateOf(settling, bedMm)
  const atRest = state()
  const afterPulls: ClampState[] = []
  for (const pull of pulls) {
    yield
    const bolt = places.get(pull.bolt)
    if (bolt === undefined) throw new Error(`the flange has no bolt ${pull.bolt}`)
    carryOut(settling, bolt, pull)
    afterPulls.push(state())
  }
  const afterPasses = pulls.flatMap(({ pass }, index) =>
    pulls[index + 1]?.pass === pass ? [] : [{ pass, state: afterPulls[index]! }],
  )
  return { atRest, afterPulls, afterPasses }
}

function carryOut(settling: SettlingFlange, bolt: number, pull: FlangePull): void {
  switch (pull.kind) {
    case 'raise':
      if (settling.loads()[bolt]! <= pull.to) settling.set(bolt, pull.to)
      return
    case 'set':
      return settling.set(bolt, pull.to)
    case 'turn':
      return settling.turn(bolt, pull.byMm)
    case 'release':
      return settling.release(bolt)
    default:
      return pull satisfies never
  }
}

function stateOf(settling: SettlingFlange, bedMm: readonly number[]): ClampState {
  const sinkMm = settling.sinkMm()
  const total = bedMm.reduce((a, b) => a + b, 0)
  const open = bedMm.reduce((sum, length, node) => (sinkMm[node]! < -openFromMm ? sum + length : sum), 0)
  return { loads: settling.loads().map(newtons), sinkMm, openShare: total === 0 ? 0 : open / total }
}

/** The length of bed that belongs to each node: half of that under each beam which ends there. */
function bedLengths(flange: Flange): readonly number[] {
  const lengths = flange.nodes.map(() => 0)
  for (const beam of flange.beams)
    if (beam.bedMpa > 0)
      for (const node of [beam.from, beam.to]) lengths[node]! += lineOf(flange, beam).lengthMm / 2
  return lengths
}
