import type { RichText } from '../../rich.ts'
import { capital, minutesAndSeconds, type HalfName, type Split } from '../../formats/index.ts'
import { archive } from '../window/archive.ts'
import { engineParts } from '../engine-parts.ts'
import { namesOf } from '../halves.ts'
import { patterns } from '../window/parts.ts'
import { sheetMeasured } from './sheet-measured.ts'
import { sheetRun } from './sheet-run.ts'
import type { Reasoned, Stamped } from './stamped.ts'
import { day } from '../formats.ts'

export interface Moved {
  readonly stamp: string
  /** The bench that goes on. */
  readonly to: string
}
/** Which record a sheet was printed from. */
export interface Head {
  readonly entries: number
  /** The last characters of the chain of entries. */
  readonly code: string
}
export interface OfSource {
  readonly from: string
  readonly enteredBy: string
  readonly checkedBy: string | null
}
export interface SheetHalf {
  readonly grade: string
  readonly pattern: keyof typeof patterns | null
  readonly fitted: boolean
}

const chosenBy = {
  chart: 'chart',
  bands: 'bands',
  person: 'by hand',
  readings: 'readings',
  tray: 'from the tray',
}

/** The build sheet, as it is printed. */
export const sheet = {
  /** Across and on each printed page of a build that can only be read. */
  flaw: {
    altered: 'NOT AS CONFIRMED',
    newer: 'INCOMPLETE',
    rules: 'BY EARLIER RULES',
    apart: 'ONE OF TWO LINES',
  },
  flawed: ({ mark, reason }: { readonly mark: string; readonly reason: string }) => `${mark}. ${reason}`,
  flawedFoot: ({ mark, foot }: { readonly mark: string; readonly foot: string }) => `${mark} · ${foot}`,
  flawedFileName: ({ mark, fileName }: { readonly mark: string; readonly fileName: string }) =>
    `${mark} ${fileName}`,
  title: ({ number }: { readonly number: string }) => `Build sheet ${number}`,
  foot: ({ number, entries, code }: Head & { readonly number: string }) =>
    `Bedplate build sheet ${number} · ${entries} entries, head ${code}`,
  fileName: ({ number, entries, code }: Head & { readonly number: string }) =>
    `Build sheet ${number} ${entries}-${code}`,
  verify: 'Verify this build',
  /** What stands on the sheet of a dry run, which is in no record. */
  practice: {
    foot: 'PRACTICE: a dry run, not the sheet of a build',
    fileName: ({ engine }: { readonly engine: string }) => `PRACTICE ${engine}`,
    noHeadCode:
      'PRACTICE. No engine was built. This dry run is in no record, so it has no head code and proves nothing.',
  },

  page: {
    printing: 'Printing',
    backToBuild: '← Back to the build',
    paper: 'Paper',
    saveAsPdf: 'Save as PDF',
    print: 'Print',
    /** Around the number of a page and how many there are; put together by the printer. */
    numbered: ['page ', ' of '] as readonly [string, string],
  },

  head: {
    demo: ({ note }: { readonly note: string }) => `DEMO. ${note}`,
    unchecked: ({ enteredBy }: { readonly enteredBy: string }) =>
      `NOT CHECKED. The numbers of the spec were entered by ${enteredBy}; no second person has compared them with the manual.`,
    engine: 'Engine',
    revision: ({ name, revision }: { readonly name: string; readonly revision: string }) =>
      `${name}, spec revision ${revision}`,
    build: 'Build',
    serial: 'Serial number',
    atTheBench: 'At the bench',
    people: ({ people, apprentice }: { readonly people: readonly string[]; readonly apprentice: boolean }) =>
      `${people.join(', ')}${apprentice ? ' (an apprentice’s build)' : ''}`,
    started: 'Started',
    finished: 'Finished',
    notFinished: 'not finished',
    numbersFrom: 'Numbers from',
    source: ({ from, enteredBy, checkedBy }: OfSource) =>
      `${from}; entered by ${enteredBy}, ${checkedBy === null ? 'not checked' : `checked by ${checkedBy}`}`,
    /** A doubt of the audit about the spec, and why somebody accepted it. */
    accepted: (facts: {
      readonly doubt: string
      readonly reason: string
      readonly by: string
      readonly on: string
    }) => `Doubt accepted by ${facts.by} on ${day(facts.on)}, because: ${facts.reason} (${facts.doubt})`,
    entries: ({ entries, code }: Head): RichText => [
      `${entries} entries, head code `,
      { code },
      '. The record is tamper-evident against this code: a record that was shortened or rewritten has another one. ' +
        'It is not tamper-proof.',
    ],
  },

  voided: ({ reason, stamp }: Reasoned) => `VOID: ${reason} (${stamp})`,
  addedAfter: 'Added after finishing',
  added: ({ stamp, text, reason }: Reasoned & { readonly text: string }) =>
    `${stamp}: ${text} Why: ${reason}`,

  /** How the build came from bench to bench. */
  benches: {
    title: 'Benches',
    handedOver: ({ stamp, from, to, note }: Moved & { readonly from: string; readonly note: string }) =>
      `${stamp}: handed over by ${from} to ${to}${note === '' ? '.' : `. ${note}`}`,
    takenOver: (facts: Moved & { readonly from: string | null; readonly reason: string }) =>
      `${facts.stamp}: taken over by ${facts.to}${facts.from === null ? '' : ` from ${facts.from}`}. Why: ${facts.reason}`,
    settled: (facts: {
      readonly stamp: string
      readonly bench: string
      readonly entry: number
      readonly reason: string
      readonly givesWay: boolean
    }) =>
      `${facts.stamp}: continued at two benches apart from entry ${facts.entry} on; the line of ${facts.bench} ${facts.givesWay ? 'does not count' : 'counts'}. Why: ${facts.reason}`,
  },

  results: {
    shells: 'Shells',
    /** A fit's row of marks, of grades or of clearances. */
    marks: 'Marks, bore / journal',
    grades: ({ split }: { readonly split: Split }) => `Shells, ${namesOf(split).join(' / ')}`,
    clearance: 'Clearance',
    worstCase: 'Worst case',
    pair: ({ first, second }: { readonly first: string; readonly second: string }) => `${first} / ${second}`,
    tightening: 'Tightening',
    procedure: 'Procedure',
    fasteners: 'Done',
    read: 'Read',
    range: ({ least, most }: { readonly least: string; readonly most: string }) =>
      least === most ? least : `${least} to ${most}`,
    unread: ({ count }: { readonly count: number }) => `${count} confirmed, not read`,
    outside: ({ numbers }: { readonly numbers: readonly string[] }) => `! not within: ${numbers.join(', ')}`,
    wrench: 'Wrench',
    wrenchWith: (facts: {
      readonly wrench: string
      readonly number: string | null
      readonly calibrated: string | null
    }) =>
      `${facts.wrench}${facts.number === null ? '' : `, no. ${facts.number}`}` +
      (facts.calibrated === null ? '' : `, calibrated ${day(facts.calibrated)}`),
    notStarted: 'not started',
    underWay: 'under way',
    flags: 'Flags and their answers',
    noFlags: 'None was raised.',
    sealant: 'Sealant',
    bead: 'Bead',
    laid: 'Laid',
    closed: 'Last bolt of its joint',
    took: 'Took',
    minutes: ({ seconds, of }: { readonly seconds: number | null; readonly of: number }) =>
      seconds === null
        ? `${of} min allowed`
        : `${seconds > of * 60 ? '! ' : ''}${minutesAndSeconds(seconds)} of ${of} min`,
    whyOver: ({ reason }: { readonly reason: string }) => `Closed over time: ${reason}`,
    signed: 'Signed',
    signatures: ['Built by', 'Checked by', 'Received by'] as readonly string[],
    signature: 'Name, date, signature',
    appendix: 'Details',
  },
  fit: {
    title: ({ fit }: { readonly fit: string }) => `Shells: ${fit}`,
    marks: ({ part, typed, stamp }: Stamped & { readonly part: string; readonly typed: string | null }) =>
      `${part}: ${typed ?? 'not noted'} (${stamp}).`,
    chosen: ({ stamp }: Stamped) => `Chosen: ${stamp}.`,
    allowed: ({ limits }: { readonly limits: string }) => `Allowed when new: ${limits}.`,
    at: 'At',
    marksHeading: 'Marks',
    half: ({ half }: { readonly half: HalfName }) => capital(engineParts.halves[half]),
    clearance: 'Clearance',
    chosenBy: 'Chosen by',
    shell: ({ grade, pattern, fitted }: SheetHalf) =>
      `${grade}${pattern === null ? '' : `, ${patterns[pattern]}`} ${fitted ? '✓' : '(not fitted)'}`,
    /** The label of its place in the tray: null where it has to be ordered, undefined where no tray was counted. */
    choice: (facts: {
      readonly by: keyof typeof chosenBy
      readonly reason: string
      readonly label: string | null | undefined
      readonly arrived: boolean
    }) =>
      [
        `${chosenBy[facts.by]}${facts.reason === '' ? '' : `: ${facts.reason}`}`,
        ...(facts.label === undefined
          ? []
          : [facts.label ?? (facts.arrived ? 'ordered, and arrived' : 'to order')]),
      ]
        .filter(Boolean)
        .join(', '),
    notComputed: 'not calculated',
    outside: '! outside',
  },
  measured: sheetMeasured,

  run: sheetRun,

  checks: {
    title: 'Checks',
    check: 'Check',
    answer: 'Answer',
    step: ({ step, counts }: { readonly step: string; readonly counts: boolean }) =>
      `${step}${counts ? '' : ' (answered again later)'}`,
    good: 'good',
    notGood: '! not good',
    allowed: ({ least, most }: { readonly least: string; readonly most: string }) =>
      `(allowed ${least} to ${most})`,
  },
  steps: {
    title: 'Steps',
    done: ({ stamp }: Stamped) => `✓ ${stamp}`,
    notDone: 'not done',
    lookedAt: ({ stamp }: Stamped) => `; looked at ${stamp}`,
    waitsForSecond: '; ! waits for a second person',
  },
  corrections: {
    title: 'Corrections',
    none: 'None.',
    kinds: {
      'pull-taken-back': archive.entries['pull-taken-back'],
      'pull-read-again': archive.entries['pull-read-again'],
      'fastener-loosened': archive.entries['fastener-loosened'],
      'fastener-replaced': archive.entries['fastener-replaced'],
      'run-restarted': archive.entries['run-restarted'],
      'half-taken-out': archive.entries['half-taken-out'],
      'part-taken-out': archive.entries['part-taken-out'],
      'rings-taken-off': archive.entries['rings-taken-off'],
      'measured-part-replaced': archive.entries['measured-part-replaced'],
      'ticks-removed': archive.entries['ticks-removed'],
      'bead-wiped-off': archive.entries['bead-wiped-off'],
      'marks-noted-again': 'marks noted again',
      'shells-chosen-again': 'shells chosen again',
      'check-answered-again': 'check answered again',
      'readings-noted-again': 'measured again',
      'readings-withdrawn': archive.entries['readings-withdrawn'],
      'step-sent-back': 'sent back',
    },
  },
  cautions: 'Cautions',
}
