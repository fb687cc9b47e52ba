import { inMillimetres } from '../../quantity/index.ts'
import type { Bead, EngineSpec } from '../../engine/index.ts'
import type { Words } from '../../words/index.ts'
import type { Content } from '../content.ts'
import type { BearingFact, DrawingFacts, View } from '../facts.ts'
import type { Piece } from '../crank/pieces.ts'
import { pinLaneNames } from '../crank/pin-names.ts'
import type { LaneName } from './lane-name.ts'
import type { Line } from './label.ts'
import { areaOf, type OnFace } from '../case/on-face.ts'
import type { Sizes } from '../sizes.ts'
import { acrossAnEnd } from '../view.ts'
import { boresInPlan } from '../case/bores.ts'
import type { Point } from '../../plane/index.ts'

/** A face with all that may have a name on it. */
interface NamedFace {
  readonly here: OnFace
  readonly facts: DrawingFacts
  readonly content: Content
  readonly outline: readonly Point[]
  readonly view: View
  readonly crank: readonly Piece[]
}

/** Everything on the face that has its name in a lane: bearings, bores, and what a bead must keep out of. */
export function namesOf(
  words: Words,
  spec: EngineSpec,
  { here, facts, content, outline, view, crank }: NamedFace,
  sizes: Sizes,
): readonly LaneName[] {
  if (acrossAnEnd(here.face)) return []
  return [
    ...pinLaneNames(words, spec, crank, view, sizes),
    ...(content.bearingNames ? bearingNames(words, here, facts, content, sizes) : []),
    ...(content.bearingNames && here.bearings.length === 0 ? saddleNames(spec, here, sizes) : []),
    ...(content.bores && here.face.plane === 'plan' && here.face.shows !== 'flange'
      ? boreNames(words, spec, outline, sizes)
      : []),
    ...(content.beads ? keepOutNames(words, here, facts, sizes) : []),
  ]
}

function bearingNames(
  words: Words,
  here: OnFace,
  facts: DrawingFacts,
  content: Content,
  sizes: Sizes,
): readonly LaneName[] {
  const beside = new Set(here.bearings.map(({ y }) => Math.sign(y)))
  return here.bearings.map(({ id, x, y, thrust }) => ({
    id: `bearing/${id}/name`,
    about: `half/${id}/upper`,
    at: { x, y },
    lines: bearingLines(
      words,
      id,
      thrust && content.clearances,
      content.clearances ? facts.bearings[id] : undefined,
      content,
      sizes,
    ),
    edge: beside.size > 1 ? (y > 0 ? 'plus' : 'minus') : 'low',
    fromThing: false,
  }))
}

function bearingLines(
  words: Words,
  id: string,
  thrust: boolean,
  fact: BearingFact | undefined,
  content: Content,
  sizes: Sizes,
): readonly Line[] {
  const outside = fact?.withinLimits === false || fact?.flag !== undefined
  const clearance: Line = {
    text: `${fact?.clearance ?? ''}${outside ? ' !' : ''}`,
    longest: '88 µm !',
    capital: sizes.quiet,
    weight: outside ? 'bold' : 'regular',
    role: outside ? 'warning-label' : 'label',
  }
  const clearances = content.clearances ? [clearance] : []
  const thrusts: readonly Line[] = thrust
    ? [{ text: words.drawing.thrust, capital: sizes.quiet, weight: 'regular', role: 'quiet-label' }]
    : []
  return [
    { text: id, capital: sizes.name, weight: 'bold', role: 'label' },
    // The room for a clearance that is not known yet is kept under the rest, not in the middle of it.
    ...(clearance.text === '' ? [...thrusts, ...clearances] : [...clearances, ...thrusts]),
  ]
}

/** On a side of the case the saddles lie behind it: they are named to find one's way by. */
function saddleNames({ case: { saddles } }: EngineSpec, { face }: OnFace, sizes: Sizes): readonly LaneName[] {
  if (face.plane !== 'plus-side' && face.plane !== 'minus-side') return []
  return saddles.map(({ id, at }) => ({
    ...{ id: `saddle/${id}/name`, at: { x: inMillimetres(at), y: 0 }, edge: 'low', fromThing: false },
    lines: [{ text: id, capital: sizes.quiet, weight: 'regular', role: 'quiet-label' }],
  }))
}

/** In a V two bores share a place along the case: each has its own edge. */
function boreNames(
  words: Words,
  spec: EngineSpec,
  outline: readonly Point[],
  sizes: Sizes,
): readonly LaneName[] {
  const bores = boresInPlan(spec.case, outline)
  const places = [...new Set(bores.map(({ x }) => Math.round(x)))]
  const together = places.map((place) => bores.filter(({ x }) => Math.abs(x - place) <= 1))
  return together.map((own) => {
    const [first] = own
    const numbers = own.map(({ number }) => number)
    return {
      ...{
        id: `bore/${first!.number}/name`,
        about: `bore/${first!.number}`,
        at: { x: first!.x, y: first!.y },
      },
      lines: [
        {
          text: words.drawing.bore({ numbers }),
          capital: sizes.quiet,
          weight: 'regular',
          role: 'quiet-label',
        },
      ],
      ...{ edge: 'high', fromThing: false },
    }
  })
}

/** What the beads that are drawn must keep out of: the name goes to the nearer edge. */
function keepOutNames(
  words: Words,
  { beads }: OnFace,
  facts: DrawingFacts,
  sizes: Sizes,
): readonly LaneName[] {
  return beads
    .filter(({ id }) => facts.beads[id] !== undefined)
    .flatMap((bead) =>
      bead.keepOut.map((zone, index): LaneName => {
        const { left, top, width, height } = areaOf(zone)
        const id = keepOutId(bead, index)
        const line = (text: string): Line => ({
          text,
          capital: sizes.quiet,
          weight: 'regular',
          role: 'warning-label',
        })
        return {
          ...{ id: `${id}/name`, about: id, at: { x: left + width / 2, y: top + height / 2 } },
          lines: [line(zone.name), line(words.drawing.noSealant)],
          edge: top + height / 2 >= 0 ? 'plus' : 'minus',
          fromThing: true,
        }
      }),
    )
}

/** How a zone that a bead must keep out of is named on the drawing. */
export function keepOutId(bead: Bead, index: number): string {
  return `keep-out/${bead.id}/${index + 1}`
}
