import type { EngineSpec, PassKind, PassStep, Procedure, Step } from '../../engine/index.ts'
import {
  isRunDone,
  numberOf,
  numbersOf,
  windowOf,
  type Pull,
  type Reading,
  type Run,
  type RunEvent,
  type AcceptanceWindow,
} from '../../tightening/index.ts'
import type { ReadWith } from '../../instrument/index.ts'
import { degrees } from '../../quantity/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import type { BuildState } from '../events/state.ts'
import { entriesOf } from './entries-of.ts'
import { flagsOn, type SheetFlag } from './flags.ts'
import { inTheirTime, type SpecUntil } from './in-their-time.ts'

/** One procedure as it was carried out, every pull in the order in which it was made. */
export interface SheetRun {
  readonly name: string
  readonly started: Stamp | null
  readonly done: boolean
  /** Orders that were exchanged for a person's own, by number, and why. */
  readonly ownOrders: readonly SheetOwnOrder[]
  /** Groups whose fasteners were declared new. */
  readonly declaredNew: readonly (Stamp & { readonly group: string })[]
  readonly pulls: readonly SheetPull[]
  readonly flags: readonly SheetFlag[]
  readonly pauses: readonly SheetPause[]
}

export interface SheetOwnOrder {
  /** As the spec has it. */
  readonly ofMaker: readonly string[]
  readonly own: readonly string[]
  readonly reason: string
}

export interface SheetPull extends Stamp {
  readonly number: number
  /** Counts from 1. */
  readonly pass: number
  readonly kind: PassKind
  /** Of a pass in steps. */
  readonly step: PassStep | null
  /** What was to be done, for an action between passes. */
  readonly instruction: string | null
  /** As on the drawing; null for an action. */
  readonly fastener: string | null
  readonly where: string | null
  /** Null where there is nothing to read. */
  readonly window: AcceptanceWindow | null
  /** As it was read last. */
  readonly reading: Reading | null
  /** With what it was read last; null where that is not known. */
  readonly readWith: ReadWith | null
  /** How far it had been turned in this pass before; 0 for all that is not turned on. */
  readonly from: Pull['from']
  /** What was read before it was read again, the first first, each with who read it again and why. */
  readonly readBefore: readonly (Stamp & { readonly reading: Reading | null; readonly reason: string })[]
  /** The cap that an action is about, where the procedure goes cap by cap; null elsewhere. */
  readonly cap: string | null
  /** Where the crank was turned: by how much it rose. */
  readonly turning: Pull['turning']
  /** The wrench it was pulled with; null where none of the shop was chosen. */
  readonly held: Pull['held']
  /** What it took to run down, where that goes on top of the spec's torque; else null. */
  readonly running: Pull['running']
  readonly verdict: 'unread' | 'within' | 'under' | 'over' | 'moved'
  /** The person was asked about a length that is far off, and is sure of it. */
  readonly sure: boolean
  readonly outOfOrder: string | null
  readonly takenBack: (Stamp & { readonly reason: string }) | null
  readonly stretch: Pull['stretch']
  /** At which it was so much longer; null where it is not tightened until it is. */
  readonly torque: Pull['torque']
  /** How long the procedure was waited for, in seconds, and why not longer; null where it does not wait. */
  readonly waited: { readonly seconds: number; readonly shortened: string | null } | null
  /** Why it no longer counts although it was not taken back. */
  readonly setAside: Pull['setAside']
}

export interface SheetPause {
  readonly paused: Stamp
  readonly reason: string
  readonly resumed: Stamp | null
}

/** The procedures in the order of the spec's steps; then those that were run by an earlier revision and are no more. */
export function runsOn(
  specs: readonly SpecUntil[],
  state: BuildState,
  entries: readonly RecordedEvent[],
): readonly SheetRun[] {
  const seenProcedures = new Set<string>()
  return specs.toReversed().flatMap(({ spec }, earlier) =>
    spec.steps.flatMap((step) => {
      const procedure = procedureRunIn(spec, step)
      if (procedure === undefined || seenProcedures.has(procedure.id)) return []
      seenProcedures.add(procedure.id)
      const own = entries.filter(({ event }) => 'procedure' in event && event.procedure === procedure.id)
      return earlier > 0 && own.length === 0 ? [] : [runOn(specs, spec, state, procedure, own)]
    }),
  )
}

function procedureRunIn({ procedures }: EngineSpec, step: Step): Procedure | undefined {
  return procedures.find(({ id }) => step.kind === 'run-procedure' && id === step.procedure)
}

function runOn(
  specs: readonly SpecUntil[],
  spec: EngineSpec,
  state: BuildState,
  procedure: Procedure,
  own: readonly RecordedEvent[],
): SheetRun {
  const [started] = entriesOf(own, 'run-started')
  return {
    name: procedure.name,
    started: started === undefined ? null : stampOf(started),
    done: isRunDone(procedure, state.runs[procedure.id]),
    ownOrders: ownOrdersOn(spec, procedure, state.runs[procedure.id]),
    declaredNew: entriesOf(own, 'fasteners-declared-new').map((entry) => ({
      ...stampOf(entry),
      group: spec.fastenerGroups.find(({ id }) => id === entry.event.group)?.name ?? entry.event.group,
    })),
    pulls: inTheirTime(specs, (each) => {
      const asItWas = each.procedures.find(({ id }) => id === procedure.id)
      return asItWas === undefined ? [] : pullsOn(each, asItWas, state.runs[procedure.id], own)
    }),
    flags: flagsOn(spec, state, procedure, own),
    pauses: pausesOn(own),
  }
}

function ownOrdersOn(
  spec: EngineSpec,
  { orders }: Procedure,
  run: Run | undefined,
): readonly SheetOwnOrder[] {
  const { reason = '', orders: own = [] } = run?.ownOrder ?? {}
  return own.map(({ order, sequence }) => ({
    ofMaker: numbersOf(spec, orders.find(({ id }) => id === order)?.sequence ?? []),
    own: numbersOf(spec, sequence),
    reason,
  }))
}

function pullsOn(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run | undefined,
  own: readonly RecordedEvent[],
): readonly SheetPull[] {
  const pulls = new Map(run?.pulls.map((each) => [each.number, each]))
  const takenBack = new Map(
    entriesOf(own, 'pull-taken-back').map((entry) => [
      entry.event.pull,
      { ...stampOf(entry), reason: entry.event.reason },
    ]),
  )
  return entriesOf(own, 'fastener-pulled').flatMap((entry) => {
    const { pull, pass, fastener, reading, verdict, outOfOrder, waited_s, waitShortened } = entry.event
    const passOfSpec = procedure.passes[pass]
    if (passOfSpec === undefined) return []
    return [
      {
        ...stampOf(entry),
        number: pull,
        pass: pass + 1,
        kind: passOfSpec.kind,
        step: passOfSpec.step ?? null,
        instruction: passOfSpec.kind === 'action' ? passOfSpec.instruction : null,
        fastener: numberOf(spec, fastener),
        where: spec.fasteners.find(({ id }) => id === fastener)?.where ?? null,
        window: windowOf(passOfSpec, fastener),
        cap: pulls.get(pull)?.cap ?? null,
        turning: pulls.get(pull)?.turning ?? null,
        reading: pulls.get(pull)?.reading ?? reading,
        readWith: readLastWith(own, entry.event),
        from: pulls.get(pull)?.from ?? degrees(0),
        readBefore: readBefore(own, pull, reading),
        held: entry.event.held ?? null,
        running: entry.event.running ?? null,
        verdict: pulls.get(pull)?.verdict ?? verdict,
        sure: entry.event.sure === true,
        outOfOrder,
        takenBack: takenBack.get(pull) ?? null,
        stretch: pulls.get(pull)?.stretch ?? null,
        torque: pulls.get(pull)?.torque ?? null,
        waited: waited_s === undefined ? null : { seconds: waited_s, shortened: waitShortened ?? null },
        setAside: pulls.get(pull)?.setAside ?? null,
      },
    ]
  })
}

/** Of a pull that was read again, with what the last time. */
function readLastWith(
  own: readonly RecordedEvent[],
  pulled: Extract<RunEvent, { type: 'fastener-pulled' }>,
): ReadWith | null {
  const again = entriesOf(own, 'pull-read-again').findLast(({ event }) => event.pull === pulled.pull)
  return (again === undefined ? pulled.readWith : again.event.readWith) ?? null
}

/** Each reading of a pull but the last. */
function readBefore(own: readonly RecordedEvent[], pull: number, first: Reading | null) {
  const again = entriesOf(own, 'pull-read-again').filter(({ event }) => event.pull === pull)
  return again.map((entry, index) => ({
    ...stampOf(entry),
    reading: index === 0 ? first : again[index - 1]!.event.reading,
    reason: entry.event.reason,
  }))
}

function pausesOn(own: readonly RecordedEvent[]): readonly SheetPause[] {
  return entriesOf(own, 'run-paused').map((entry) => {
    const resumed = entriesOf(own, 'run-resumed').find(({ seq }) => seq > entry.seq)
    return {
      paused: stampOf(entry),
      reason: entry.event.reason,
      resumed: resumed === undefined ? null : stampOf(resumed),
    }
  })
}
