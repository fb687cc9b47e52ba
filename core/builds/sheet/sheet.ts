import { acceptedDoubts, type AcceptedFinding } from '../../audit/index.ts'
import type { Caution, Danger, EngineSpec, Source, StepKind } from '../../engine/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { replay } from '../events/evolve.ts'
import { benchesOn, type SheetBench } from './benches.ts'
import { beadsOn, type SheetBead } from './beads.ts'
import { checksOn, type SheetCheck } from './checks.ts'
import { correctionsIn, type SheetCorrection } from './corrections.ts'
import { fitsOn, type SheetFit } from './fits.ts'
import { limitsOn, type SheetLimit } from './limits.ts'
import { placedOn, type SheetPlace } from './placed.ts'
import { ringsOn, type SheetRings } from './rings.ts'
import { turningsOn, type SheetTurning } from './turnings.ts'
import { partsOn, type SheetPart } from './parts.ts'
import {
  notesOn,
  photosOn,
  photosSkippedOn,
  photosWithdrawnOn,
  type SheetNote,
  type SheetPhoto,
  type SheetPhotoSkipped,
  type SheetPhotoWithdrawn,
} from './photos.ts'
import { redoneOn, skippedOn, type SheetRedone, type SheetSkipped } from './plan.ts'
import { runsOn, type SheetRun } from './runs.ts'
import { inTheirTime, type SpecUntil } from './in-their-time.ts'
import { revisionsOn, type SheetRevision } from './revisions.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import type { BuildState } from '../events/state.ts'
import { revisionSpans } from '../revision/spans.ts'
import { awaitsSecondPerson } from '../steps/steps.ts'
import { doneSince } from './done-since.ts'

/** All that the printed sheet of a build says, as plain data; units and words are the page's. */
export interface BuildSheet {
  readonly engine: {
    readonly name: string
    readonly summary: string
    readonly revision: string
    readonly source: Source
  }
  /** The build's own name and serial number, and the hash of the spec that it went by last; null before its first entry. */
  readonly build: { readonly name: string; readonly serial: string; readonly specSha256: string } | null
  readonly started: Stamp | null
  readonly finished: Stamp | null
  /** When the build was made void, and why; null where it counts. */
  readonly voided: (Stamp & { readonly reason: string }) | null
  /** Whether an apprentice built it. */
  readonly apprentice: boolean
  /** Everybody who made an entry, in the order of their first. */
  readonly people: readonly string[]
  readonly fits: readonly SheetFit[]
  readonly runs: readonly SheetRun[]
  readonly beads: readonly SheetBead[]
  readonly parts: readonly SheetPart[]
  readonly limits: readonly SheetLimit[]
  readonly placed: readonly SheetPlace[]
  readonly photos: readonly SheetPhoto[]
  readonly photosSkipped: readonly SheetPhotoSkipped[]
  readonly photosWithdrawn: readonly SheetPhotoWithdrawn[]
  /** What was done again, and what the build went without, in order. */
  readonly redone: readonly SheetRedone[]
  readonly skipped: readonly SheetSkipped[]
  /** The revisions that were taken over, in order. */
  readonly revisions: readonly SheetRevision[]
  /** What was written at steps, in order. */
  readonly notes: readonly SheetNote[]
  readonly rings: readonly SheetRings[]
  /** What the crank took to turn in steps of that kind; in procedures it stands among the pulls. */
  readonly turnings: readonly SheetTurning[]
  readonly checks: readonly SheetCheck[]
  readonly steps: readonly SheetStep[]
  /** Everything that was taken back, taken out, noted or chosen again, in order. */
  readonly corrections: readonly SheetCorrection[]
  /** What was added to the build after it was finished, in order. */
  readonly amendments: readonly (Stamp & { readonly text: string; readonly reason: string })[]
  /** How it came from bench to bench. */
  readonly benches: readonly SheetBench[]
  readonly cautions: readonly Caution[]
  /** Doubts about the spec that somebody accepted, with the reason. */
  readonly accepted: readonly AcceptedFinding[]
  /**
   * What an altered or shortened copy cannot show: how many entries there are, and the first 16 digits of the
   * last hash.
   */
  readonly head: { readonly entries: number; readonly code: string }
}

/** A step and the entry by which its work was done; null while it is not. */
export interface SheetStep {
  readonly name: string
  readonly kind: StepKind
  /** What can hurt while it is done, by kind. */
  readonly dangers: readonly Danger[]
  readonly done: Stamp | null
  /** Why the build goes on without it; null where it does not. */
  readonly skipped: string | null
  /** How often it was opened again after it was done. */
  readonly again: number
  /** Who looked at it as a second person, and when; null where nobody did. */
  readonly second: Stamp | null
  /** Whether it still waits for a second person. */
  readonly unconfirmed: boolean
}

/**
 * The sheet of a build as far as it has come. The entries are all of the build's, from the first; `earlier` has the revisions of the
 * spec by which it went before `spec`, in order.
 */
export function buildSheet(
  spec: EngineSpec,
  entries: readonly RecordedEvent[],
  earlier: readonly SpecUntil[] = [],
): BuildSheet {
  const specs = [...earlier, { spec, until: Infinity }]
  const { name, summary, revision, source } = spec
  const start = entries.find(({ event }) => event.type === 'build-started')
  const finish = entries.find(({ event }) => event.type === 'build-finished')
  const state = replay(entries)
  const last = entries.at(-1)
  return {
    engine: { name, summary, revision, source },
    build: start?.event.type === 'build-started' ? named(start.event, entries) : null,
    started: start === undefined ? null : stampOf(start),
    finished: finish === undefined ? null : stampOf(finish),
    voided: voidedBy(entries),
    apprentice: state.started?.apprentice === true,
    people: [...new Set(entries.map(({ person }) => person))],
    fits: fitsOn(spec, state, entries),
    runs: runsOn(specs, state, entries),
    beads: beadsOn(spec, state, entries),
    parts: partsOn(spec, state, entries),
    limits: inTheirTime(specs, (each) => limitsOn(each, entries)),
    placed: inTheirTime(specs, (each) => placedOn(each, entries)),
    photos: photosOn(spec, entries),
    photosSkipped: photosSkippedOn(spec, entries),
    photosWithdrawn: photosWithdrawnOn(spec, entries),
    redone: redoneOn(specs, entries),
    skipped: skippedOn(spec, entries),
    revisions: revisionsOn(specs, entries),
    notes: notesOn(spec, entries),
    rings: inTheirTime(specs, (each) => ringsOn(each, entries)),
    turnings: inTheirTime(specs, (each) => turningsOn(each, entries)),
    checks: inTheirTime(specs, (each) => checksOn(each, entries)),
    steps: stepsOn(specs, state, entries),
    corrections: inTheirTime(specs, (each) => correctionsIn(each, entries)),
    amendments: entries.flatMap((entry) =>
      entry.event.type === 'build-amended'
        ? [{ ...stampOf(entry), text: entry.event.text, reason: entry.event.reason }]
        : [],
    ),
    benches: benchesOn(entries),
    cautions: spec.cautions,
    accepted: acceptedDoubts(spec),
    head: { entries: entries.length, code: last?.hash.slice(0, 16) ?? '' },
  }
}

function named(
  { name, serial, specSha256 }: Extract<RecordedEvent['event'], { type: 'build-started' }>,
  entries: readonly RecordedEvent[],
) {
  return { name, serial, specSha256: revisionSpans(entries).at(-1)?.specSha256 ?? specSha256 }
}

function voidedBy(entries: readonly RecordedEvent[]): BuildSheet['voided'] {
  const entry = entries.find(({ event }) => event.type === 'build-voided')
  return entry?.event.type === 'build-voided' ? { ...stampOf(entry), reason: entry.event.reason } : null
}

/** Each step with the entry after which its work was done and stayed so, and who looked at it last. */
function stepsOn(
  specs: readonly SpecUntil[],
  atEnd: BuildState,
  entries: readonly RecordedEvent[],
): readonly SheetStep[] {
  const { spec } = specs.at(-1)!
  const doneBy = doneSince(specs, atEnd, entries)
  const lookedAtBy = new Map<string, Stamp>()
  for (const entry of entries)
    if (entry.event.type === 'step-confirmed')
      lookedAtBy.set(entry.event.step, { ...stampOf(entry), person: entry.event.second })
  return spec.steps.map((step) => ({
    name: step.name,
    kind: step.kind,
    dangers: step.dangers ?? [],
    done: doneBy.get(step.id) ?? null,
    skipped: atEnd.plan.skipped[step.id]?.reason ?? null,
    again: entries.filter(({ event }) => event.type === 'step-reopened' && event.step === step.id).length,
    second: atEnd.confirmed[step.id] === undefined ? null : (lookedAtBy.get(step.id) ?? null),
    unconfirmed: awaitsSecondPerson(spec, atEnd, step),
  }))
}
