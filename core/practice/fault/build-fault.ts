import type { Half, RecordedEvent } from '../../builds/index.ts'
import { clearanceWith, type JudgedClearance } from '../../bearing/index.ts'
import type { EngineSpec, Fit } from '../../engine/index.ts'
import { plannedIn } from '../../tightening/index.ts'
import type { Chance } from '../chance.ts'
import { chartAnswers } from '../chart-drill.ts'
import { linedUp, withGapAt } from './gaps-in-line.ts'
import { strayBeads } from './stray-bead.ts'

/** What can be wrong with a finished build. */
export const faultKinds = [
  'missed-pull',
  'shells-swapped',
  'bead-over-passage',
  'cap-turned',
  'gaps-in-line',
] as const
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
  /** Two neighbouring rings of one piston. */
  | {
      readonly kind: 'gaps-in-line'
      readonly step: string
      readonly cylinder: number
      /** What the piston is called. */
      readonly piston: string
      readonly rings: readonly [string, string]
    }

/** A finished build with one thing wrong, as it is shown. */
export interface FaultyBuild {
  /** As the engine is drawn: where a bead was laid wrong, its path is the one that was laid. */
  readonly spec: EngineSpec
  readonly entries: readonly RecordedEvent[]
  readonly fault: BuildFault
}

/** What is wrong with a build after the change; null where the engine, or this build, has nothing of the kind. */
type MakeFault = (spec: EngineSpec, entries: readonly RecordedEvent[], chance: Chance) => FaultyBuild | null

export const spoil: Readonly<Record<FaultKind, MakeFault>> = {
  'missed-pull': missPull,
  'shells-swapped': swapShells,
  'bead-over-passage': layOverPassage,
  'cap-turned': turnCap,
  'gaps-in-line': lineUpGaps,
}

/** The kinds that an engine can have, without a build of it. */
export function faultKindsOf(spec: EngineSpec): readonly FaultKind[] {
  const has: Readonly<Record<FaultKind, () => boolean>> = {
    'missed-pull': () => pullsThatShow(spec).length > 0,
    'shells-swapped': () => spec.fits.some((fit) => gradesByChart(fit) > 1),
    'bead-over-passage': () => strayBeads(spec).length > 0,
    'cap-turned': () => turnableCaps(spec).length > 0,
    'gaps-in-line': () => linedUp(spec).length > 0,
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

function lineUpGaps(spec: EngineSpec, entries: readonly RecordedEvent[], chance: Chance): FaultyBuild | null {
  const all = linedUp(spec)
  if (all.length === 0) return null
  const lined = chance.one(all)
  const { step, set, rings } = lined
  const { cylinder, name } = chance.one(set.pistons)
  const fault = { kind: 'gaps-in-line', step, cylinder, piston: name.text, rings } as const
  return { spec, entries: withGapAt(entries, lined, cylinder), fault }
}
