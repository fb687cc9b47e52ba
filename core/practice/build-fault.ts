import type { Half, RecordedEvent } from '../builds/index.ts'
import { clearanceWith, type JudgedClearance } from '../bearing/index.ts'
import type { Bead, EngineSpec, Fit, OilPassage } from '../engine/index.ts'
import {
  distanceToSegment,
  gapToBox,
  insidePolygon,
  nearestOnSegment,
  sidesOf,
  type Point,
} from '../plane/index.ts'
import { nanometres, type Length } from '../quantity/index.ts'
import { plannedIn } from '../tightening/index.ts'
import type { Chance } from './chance.ts'
import { chartAnswers } from './chart-drill.ts'

/** What can be wrong with a finished build. */
export const faultKinds = ['missed-pull', 'shells-swapped', 'bead-over-passage', 'cap-turned'] as const
export type FaultKind = (typeof faultKinds)[number]

/** A shell that lies where another one belongs. */
export interface MisplacedShell {
  readonly position: string
  readonly half: Half
  readonly grade: string
  /** What the chart has for the marks there. */
  readonly wanted: string
  /** What the two shells of the bearing leave as they lie; null where the spec gives no sizes. */
  readonly leaves: JudgedClearance | null
}

/** The one thing that is wrong. `pass` counts from 0. */
export type BuildFault =
  | {
      readonly kind: 'missed-pull'
      readonly procedure: string
      readonly pass: number
      readonly fastener: string
    }
  | {
      readonly kind: 'shells-swapped'
      readonly fit: string
      readonly shells: readonly [MisplacedShell, MisplacedShell]
    }
  | { readonly kind: 'bead-over-passage'; readonly bead: string; readonly passage: string }
  | { readonly kind: 'cap-turned'; readonly bearing: string }

/** A finished build with one thing wrong, as it is shown. */
export interface FaultyBuild {
  /** As the engine is drawn: where a bead was laid wrong, its path is the one that was laid. */
  readonly spec: EngineSpec
  readonly entries: readonly RecordedEvent[]
  readonly fault: BuildFault
}

/** What is wrong with a build after the change; null where the engine, or this build, has nothing of the kind. */
type Spoil = (spec: EngineSpec, entries: readonly RecordedEvent[], chance: Chance) => FaultyBuild | null

export const spoil: Readonly<Record<FaultKind, Spoil>> = {
  'missed-pull': missPull,
  'shells-swapped': swapShells,
  'bead-over-passage': layOverPassage,
  'cap-turned': turnCap,
}

/** The kinds that an engine can have, without a build of it. */
export function faultKindsOf(spec: EngineSpec): readonly FaultKind[] {
  const has: Readonly<Record<FaultKind, () => boolean>> = {
    'missed-pull': () => pullsThatShow(spec).length > 0,
    'shells-swapped': () => spec.fits.some((fit) => gradesByChart(fit) > 1),
    'bead-over-passage': () => strayBeads(spec).length > 0,
    'cap-turned': () => turnableCaps(spec).length > 0,
  }
  return faultKinds.filter((kind) => has[kind]())
}

/** Only of fasteners that one procedure alone pulls: the drawing shows how far the last one came. */
function pullsThatShow({ procedures }: EngineSpec) {
  const all = procedures.flatMap((procedure) =>
    procedure.passes.flatMap(({ kind }, pass) =>
      plannedIn(procedure, pass).flatMap(({ fastener }) =>
        fastener === null ? [] : [{ procedure: procedure.id, pass, fastener, kind }],
      ),
    ),
  )
  const pulledBy = Map.groupBy(all, ({ fastener }) => fastener)
  return all.filter(
    ({ fastener, procedure, kind }) =>
      ['seat', 'torque', 'angle', 'recheck'].includes(kind) &&
      pulledBy.get(fastener)!.every((each) => each.procedure === procedure),
  )
}

function missPull(spec: EngineSpec, entries: readonly RecordedEvent[], chance: Chance): FaultyBuild | null {
  const pulls = pullsThatShow(spec)
  if (pulls.length === 0) return null
  // One seated by hand only is pulled home in the next pass.
  const tightened = pulls.filter(({ kind }) => kind !== 'seat')
  const { procedure, pass, fastener } = chance.one(tightened.length > 0 ? tightened : pulls)
  const left = entries.filter(
    ({ event }) =>
      event.type !== 'fastener-pulled' ||
      event.procedure !== procedure ||
      event.pass !== pass ||
      event.fastener !== fastener,
  )
  return { spec, entries: numbered(left), fault: { kind: 'missed-pull', procedure, pass, fastener } }
}

function numbered(entries: readonly RecordedEvent[]): readonly RecordedEvent[] {
  return entries.map((entry, index) => ({ ...entry, seq: index + 1 }))
}

/** How many grades the chart has in all for the fit's bearings. */
function gradesByChart(fit: Fit): number {
  const keys = fit.positions.flatMap((position) => chartAnswers(fit, position).map(({ key }) => key))
  return new Set(keys.flatMap(({ upper, lower }) => [upper, lower])).size
}

type Choices = Extract<RecordedEvent['event'], { type: 'shells-chosen' }>['choices']

function swapShells(spec: EngineSpec, entries: readonly RecordedEvent[], chance: Chance): FaultyBuild | null {
  const chosen = entries.flatMap(({ event }) => (event.type === 'shells-chosen' ? [event] : []))
  const pairs = chosen.flatMap(({ fit, choices }) => {
    const byChart = choices.filter(({ by }) => by === 'chart')
    return byChart.flatMap((one, index) =>
      byChart
        .slice(index + 1)
        .filter((other) => other.grade !== one.grade && other.position !== one.position)
        .map((other) => ({ fit, one, other })),
    )
  })
  if (pairs.length === 0) return null
  const { fit, one, other } = chance.one(pairs)
  const exchanged = (choices: Choices): Choices =>
    choices.map((each) =>
      each === one ? { ...each, grade: other.grade } : each === other ? { ...each, grade: one.grade } : each,
    )
  const changed = entries.map((entry) =>
    entry.event.type === 'shells-chosen' && entry.event.fit === fit
      ? { ...entry, event: { ...entry.event, choices: exchanged(entry.event.choices) } }
      : entry,
  )
  const now = changed.flatMap(({ event }) =>
    event.type === 'shells-chosen' && event.fit === fit ? event.choices : [],
  )
  const misplaced = (shell: Choices[number], grade: string): MisplacedShell => ({
    ...{ position: shell.position, half: shell.half, grade, wanted: shell.grade },
    leaves: clearanceLeft(spec, entries, fit, shell.position, now),
  })
  const shells = [misplaced(one, other.grade), misplaced(other, one.grade)] as const
  return { spec, entries: changed, fault: { kind: 'shells-swapped', fit, shells } }
}

function clearanceLeft(
  { fits }: EngineSpec,
  entries: readonly RecordedEvent[],
  id: string,
  position: string,
  choices: Choices,
): JudgedClearance | null {
  const fit = fits.find((each) => each.id === id)
  const at = fit?.positions.indexOf(position) ?? -1
  const markOf = (part: 'housing' | 'journal') =>
    entries.flatMap(({ event }) =>
      event.type === 'marks-noted' && event.fit === id && event.part === part
        ? [event.marks[at] ?? null]
        : [],
    )[0] ?? null
  const gradeOf = (half: Half) =>
    choices.find((each) => each.position === position && each.half === half)?.grade
  const [housing, journal, upper, lower] = [
    markOf('housing'),
    markOf('journal'),
    gradeOf('upper'),
    gradeOf('lower'),
  ]
  if (fit === undefined || housing === null || journal === null) return null
  if (upper === undefined || lower === undefined) return null
  const judged = clearanceWith(fit, housing, journal, upper, lower)
  return judged.ok ? judged.value : null
}

interface StrayBead {
  readonly bead: Bead
  readonly passage: OilPassage
  readonly path: Bead['path']
}

/** How far to either side of its kink the bead leaves its path, and how far a kink goes at most, in nm. */
const kinks = [12e6, 20e6, 30e6]
const farthestKink = 40e6
/** So many corners of a way round a passage can be left out. */
const mostCorners = 6

/** Each bead that can be laid over an oil passage of its face and over nothing else. */
function strayBeads(spec: EngineSpec): readonly StrayBead[] {
  return spec.beads.flatMap((bead) =>
    spec.case.oilPassages
      .filter(({ face }) => face === bead.face)
      .flatMap((passage): readonly StrayBead[] => {
        const path = [...shortcuts(bead), ...kinked(bead, passage)].find((each) =>
          meetsOnly(spec, { ...bead, path: each }, passage),
        )
        return path === undefined ? [] : [{ bead, passage, path }]
      }),
  )
}

const pointOf = ([x, y]: readonly [Length, Length]): Point => ({ x, y })

/** The bead laid straight on where its path goes round something: the fewest corners left out first. */
function shortcuts({ path }: Bead): readonly Bead['path'][] {
  return Array.from({ length: mostCorners }, (_, index) => index + 1).flatMap((count) =>
    Array.from({ length: Math.max(0, path.length - 1 - count) }, (_, from) => [
      ...path.slice(0, from + 1),
      ...path.slice(from + 1 + count),
    ]),
  )
}

/** The bead's path with a kink to the middle of the passage, from the side of it that is nearest first. */
function kinked(bead: Bead, passage: OilPassage): readonly Bead['path'][] {
  const middle = pointOf(passage.at)
  const sides = sidesOf(bead.path.map(pointOf), bead.closed).map((side, index) => ({ side, index }))
  const near = sides
    .filter(({ side }) => distanceToSegment(middle, ...side) <= farthestKink)
    .toSorted(
      (one, other) => distanceToSegment(middle, ...one.side) - distanceToSegment(middle, ...other.side),
    )
  return near.flatMap(({ side: [from, to], index }) => {
    const at = nearestOnSegment(middle, from, to)
    return kinks.map((kink): Bead['path'] => {
      const towards = (end: Point): readonly [Length, Length] => {
        const left = Math.hypot(end.x - at.x, end.y - at.y)
        const share = left === 0 ? 0 : Math.min(1, kink / left)
        const placed = (here: number, there: number) => nanometres(Math.round(here + (there - here) * share))
        return [placed(at.x, end.x), placed(at.y, end.y)]
      }
      const over: Bead['path'] = [towards(from), passage.at, towards(to)] as Bead['path']
      return [...bead.path.slice(0, index + 1), ...over, ...bead.path.slice(index + 1)]
    })
  })
}

/** Whether the bead touches this passage, and no hole, other passage, zone to keep out of, or end of the face. */
function meetsOnly(spec: EngineSpec, bead: Bead, passage: OilPassage): boolean {
  const points = bead.path.map(pointOf)
  const sides = sidesOf(points, bead.closed)
  const boxOf = ({ at: [x, y], size: [width, height] }: Pick<OilPassage, 'at' | 'size'>) => ({
    ...{ left: x - width / 2, top: y - height / 2, width, height },
  })
  const gapTo = (zone: Pick<OilPassage, 'at' | 'size'>) =>
    Math.min(...sides.map(([from, to]) => gapToBox(boxOf(zone), from, to)))
  const isAt = (zone: Pick<OilPassage, 'at'>) =>
    Math.hypot(zone.at[0] - passage.at[0], zone.at[1] - passage.at[1]) < Math.max(...passage.size, bead.width)
  const others = [
    ...spec.case.oilPassages.filter((each) => each.face === bead.face && each !== passage),
    // The zone that the spec keeps clear for this passage is the same fault, not another one.
    ...bead.keepOut.filter((zone) => !isAt(zone)),
  ]
  const threads = new Map(spec.fastenerGroups.map(({ id, thread }) => [id, thread.diameter]))
  const holes = [
    ...spec.fasteners.map(({ face, at, group }) => ({
      face,
      at,
      diameter: threads.get(group) ?? nanometres(0),
    })),
    ...spec.case.dowels,
  ].filter(({ face }) => face === bead.face)
  const outline = spec.case.faces.find(({ id }) => id === bead.face)?.outline?.map(pointOf)
  return (
    gapTo(passage) < bead.width / 2 &&
    others.every((zone) => gapTo(zone) >= bead.width / 2) &&
    holes.every(({ at, diameter }) =>
      sides.every((side) => distanceToSegment(pointOf(at), ...side) >= (diameter + bead.width) / 2),
    ) &&
    (outline === undefined || points.every((point) => insidePolygon(outline, point)))
  )
}

function layOverPassage(
  spec: EngineSpec,
  entries: readonly RecordedEvent[],
  chance: Chance,
): FaultyBuild | null {
  const laid = new Set(entries.flatMap(({ event }) => (event.type === 'bead-laid' ? [event.bead] : [])))
  const stray = strayBeads(spec).filter(({ bead }) => laid.has(bead.id))
  if (stray.length === 0) return null
  const { bead, passage, path } = chance.one(stray)
  const beads = spec.beads.map((each) => (each === bead ? { ...each, path } : each))
  return {
    ...{ spec: { ...spec, beads }, entries },
    fault: { kind: 'bead-over-passage', bead: bead.id, passage: passage.id },
  }
}

/** The bearings whose caps are drawn: separate main caps, on a face that lies in plan. */
export function turnableCaps({ case: engineCase, fasteners }: EngineSpec): readonly string[] {
  const face = engineCase.faces.find(({ shows, plane }) => shows === 'saddles' && plane === 'plan')
  const isHeld = face !== undefined && fasteners.some((each) => each.face === face.id)
  return engineCase.family === 'caps' && isHeld ? engineCase.saddles.map(({ id }) => id) : []
}

function turnCap(spec: EngineSpec, entries: readonly RecordedEvent[], chance: Chance): FaultyBuild | null {
  const caps = turnableCaps(spec)
  return caps.length === 0
    ? null
    : { spec, entries, fault: { kind: 'cap-turned', bearing: chance.one(caps) } }
}
