import type { Half } from '../../bearing/index.ts'
import type { EngineSpec, Face } from '../../engine/index.ts'
import { orientationsFor, viewOriented, type BenchOrientation, type View } from '../../layout/index.ts'
import { inMillimetres } from '../../quantity/index.ts'
import { Chance } from '../chance.ts'

/** A thing to be found on a face that does not lie as the manual prints it. */
export type MirrorQuestion = {
  readonly face: string
  readonly orientation: BenchOrientation
  readonly view: View
  /** Whether the face is seen from its other side than in the manual: the picture is then a mirror image of the printed one. */
  readonly isMirrored: boolean
  /** As the scene names it. */
  readonly key: string
} & (
  | { readonly kind: 'shell'; readonly position: string; readonly half: Half }
  | { readonly kind: 'fastener'; readonly fastener: string }
)

export interface MirrorDrill {
  /** At least one. */
  readonly questions: readonly MirrorQuestion[]
}

const mostOfAKind = 3

/** How the manual prints a face. */
export function printedView(face: Face): View {
  return { from: face.workedFrom, turn: 0 }
}

/**
 * Shells of one half of the case and fasteners of one of its faces, each lying otherwise than printed. Null where neither leaves
 * a choice: with one saddle, and no face that has two numbered fasteners.
 */
export function mirrorDrill(spec: EngineSpec, seed: string): MirrorDrill | null {
  const chance = new Chance(seed)
  const questions = [...shellQuestions(spec, chance), ...fastenerQuestions(spec, chance)]
  return questions.length === 0 ? null : { questions }
}

/** A half that lies with its joint up: the upper one is turned over for it, and is seen from below. */
function shellQuestions(spec: EngineSpec, chance: Chance): readonly MirrorQuestion[] {
  const faces = spec.case.faces.filter(({ shows, plane }) => shows === 'saddles' && plane === 'plan')
  if (faces.length === 0 || spec.case.saddles.length < 2) return []
  const face = chance.one(faces)
  const ways = (['upper', 'lower'] as const).flatMap((half) => {
    const orientation = half === 'upper' ? 'upside-down' : 'upright'
    return viewsOf(face, [orientation]).map((way) => ({ half, ...way }))
  })
  const { half, orientation, view } = chance.one(ways)
  return chance
    .shuffled(spec.case.saddles)
    .slice(0, mostOfAKind)
    .map(({ id }) => ({
      ...{ kind: 'shell', position: id, half, key: `half/${id}/${half}` },
      ...{ face: face.id, orientation, view, isMirrored: isMirrored(face, view) },
    }))
}

function fastenerQuestions(spec: EngineSpec, chance: Chance): readonly MirrorQuestion[] {
  const faces = spec.case.faces.filter(
    ({ id, shows }) =>
      shows !== 'rods' && uniquelyNumbered(spec, id).length > 0 && placesOn(spec, id).length > 1,
  )
  if (faces.length === 0) return []
  const face = chance.one(faces)
  const { orientation, view } = chance.one(viewsOf(face, orientationsFor(face)))
  return chance
    .shuffled(uniquelyNumbered(spec, face.id))
    .slice(0, mostOfAKind)
    .map((fastener) => ({
      ...{ kind: 'fastener', fastener, key: `fastener/${fastener}` },
      ...{ face: face.id, orientation, view, isMirrored: isMirrored(face, view) },
    }))
}

/** Those whose number no other fastener of the face has. */
function uniquelyNumbered(spec: EngineSpec, face: string): readonly string[] {
  const here = spec.fasteners.filter((fastener) => fastener.face === face)
  const alike = (number: string) => here.filter((fastener) => fastener.number === number).length
  return here.flatMap(({ id, number }) => (alike(number) === 1 ? [id] : []))
}

function placesOn({ fasteners }: EngineSpec, face: string) {
  return fasteners.filter((fastener) => fastener.face === face)
}

/** Every way in which a face can lie before a person and is not as it is printed. */
function viewsOf(
  face: Face,
  orientations: readonly BenchOrientation[],
): readonly { readonly orientation: BenchOrientation; readonly view: View }[] {
  const printed = printedView(face)
  const all = orientations.flatMap((orientation) =>
    (['above', 'below'] as const).flatMap((from) =>
      ([0, 1, 2, 3] as const).map((turn) => ({
        orientation,
        view: viewOriented(face, orientation, { from, turn }),
      })),
    ),
  )
  return all.filter(
    ({ orientation, view }, place) =>
      (view.from !== printed.from || view.turn !== printed.turn) &&
      all.findIndex(
        (each) =>
          each.orientation === orientation && each.view.from === view.from && each.view.turn === view.turn,
      ) === place,
  )
}

/** A side or an end of the case is never looked at through the metal: only a plan has two sides. */
function isMirrored(face: Face, view: View): boolean {
  return face.plane === 'plan' && view.from !== face.workedFrom
}

/**
 * Where a wrong answer lies, from the right one: at the same place of the other end, of the other side, of both, or elsewhere.
 */
export type MirrorSlip = 'other-end' | 'other-side' | 'both' | 'elsewhere'

/** Null where `tapped` is right. What is on another drawing lies elsewhere. */
export function judgeMirror(spec: EngineSpec, question: MirrorQuestion, tapped: string): MirrorSlip | null {
  if (tapped === question.key) return null
  const places = candidatesOf(spec, question)
  const at = (about: string) => places.find((place) => place.about === about)
  const [wanted, found] = [at(question.key), at(tapped)]
  if (wanted === undefined || found === undefined) return 'elsewhere'
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2
  const end = 2 * middle(places.map(({ x }) => x)) - wanted.x
  const side = 2 * middle(places.map(({ y }) => y)) - wanted.y
  const slips = [
    { slip: 'other-end', x: end, y: wanted.y },
    { slip: 'other-side', x: wanted.x, y: side },
    { slip: 'both', x: end, y: side },
  ] as const
  const away = (one: Point, other: Point) => Math.hypot(one.x - other.x, one.y - other.y)
  const nearestFastener = (to: Point) =>
    places.reduce((best, each) => (away(each, to) < away(best, to) ? each : best))
  const length = Math.max(...places.map((one) => Math.max(...places.map((other) => away(one, other)))))
  const isThere = (mirrored: Point) =>
    nearestFastener(mirrored) === found && away(found, mirrored) <= nearEnough * length
  return slips.find(isThere)?.slip ?? 'elsewhere'
}

interface Point {
  readonly x: number
  readonly y: number
}

/** A place of the other end or side is one no further from the mirror image than this share of the face's length. */
const nearEnough = 0.1

/** What can be answered, with its place in mm of the face's own frame. */
export function candidatesOf(
  spec: EngineSpec,
  question: MirrorQuestion,
): readonly { readonly about: string; readonly x: number; readonly y: number }[] {
  if (question.kind === 'shell') {
    const { half } = question
    return spec.case.saddles.map(({ id, at }) => ({
      about: `half/${id}/${half}`,
      x: inMillimetres(at),
      y: 0,
    }))
  }
  return placesOn(spec, question.face).map(({ id, at: [x, y] }) => ({
    about: `fastener/${id}`,
    ...{ x: inMillimetres(x), y: inMillimetres(y) },
  }))
}
