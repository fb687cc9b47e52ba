import type { RichText } from '../../rich.ts'
import { counted } from '../formats.ts'
import type { Split } from '../../formats/index.ts'
import { pairText } from '../halves.ts'

/** A build, as it is named on paper. */
export interface Named {
  readonly number: string
  readonly name: string
}

const named = ({ number, name }: Named) => `${number} “${name}”`

/** Builds that were made: finding, comparing, exporting and importing them. */
export const archive = {
  title: 'Archive',
  states: { open: 'open', finished: '✓ finished', voided: '✕ void' },

  // Finding
  search: {
    words: 'Search for',
    wordsExample: 'engine, serial number, person, part …',
    saidOf: 'Search in',
    anything: 'everything',
    kinds: {
      engine: 'the engine',
      number: 'the number',
      name: 'the name',
      serial: 'the serial number',
      person: 'a person',
      part: 'a part: shell, fastener',
      flag: 'a flag',
    },
    startedFrom: 'Started from',
    startedTo: 'to',
    builds: 'Builds',
    states: {
      any: 'any',
      open: 'open',
      finished: 'finished',
      flagged: 'flagged',
      voided: 'void',
      forked: 'continued apart',
    },
    anyBench: 'any',
    nothingFound:
      'No build found. Leave out a word or a date, or choose any state; a new record has no builds yet.',
  },
  pages: 'Pages',
  newer: '← Newer',
  older: 'Older →',
  page: ({ page }: { readonly page: number }) => `page ${page}`,

  table: {
    choose: 'Choose',
    chooseBuild: ({ number }: { readonly number: string }) => `Choose ${number}`,
    number: 'Number',
    build: 'Build',
    engine: 'Engine',
    serial: 'Serial number',
    lastEntry: 'Last entry',
    entries: 'Entries',
    state: 'State',
    engineOf: ({ engine, demo }: { readonly engine: string; readonly demo: boolean }) =>
      `${engine}${demo ? ', demo' : ''}`,
    flagged: '! flagged',
  },

  // What was ticked
  chosenBuilds: 'Chosen builds',
  oneChosen: ({ one }: { readonly one: string }): RichText => [{ strong: one }, ' chosen.'],
  twoChosen: ({ one, other }: { readonly one: string; readonly other: string }): RichText => [
    { strong: one },
    ' and ',
    { strong: other },
    ' chosen.',
  ],
  compareTwo: 'Compare the two',
  twoEngines: 'They are builds of two engines: only builds of one engine can be compared.',
  verifyIt: 'Verify it',
  tickOne: 'Tick a build to export or verify it, two of one engine to compare them.',

  // Exporting
  takeOut: 'Export',
  exportOne: 'Export as one file',
  pullsCsv: 'Pulls as CSV',
  readingsCsv: 'Readings as CSV',
  partsCsv: 'Parts as CSV',

  // Importing
  import: {
    title: 'Import a build from another bench',
    dropHere:
      'Drop an exported file (.bedplate) anywhere here, or choose it. It is refused if one byte of it was ' +
      'changed.',
    chooseFile: 'Choose a file',
    checking: ({ fileName }: { readonly fileName: string }) => `Checking ${fileName} …`,
    file: 'Exported build',
    open: ({ number }: { readonly number: string }) => `Open ${number}`,
    added: (facts: Named & { readonly entries: number }) =>
      `Imported as ${named(facts)}: ${counted(facts.entries, 'entry', 'entries')}, each as it was confirmed.`,
    known: (facts: Named) => `${named(facts)} is here already, entry for entry. Nothing was changed.`,
    continued: (facts: Named & { readonly added: number; readonly entries: number }) =>
      `${named(facts)} was continued elsewhere: ${counted(facts.added, 'more entry is', 'more entries are')} here now, ` +
      `${facts.entries} in all.`,
    behind: (facts: Named & { readonly behind: number }) =>
      `${named(facts)} has ${counted(facts.behind, 'more entry', 'more entries')} here than in the file. ` +
      'Nothing was changed.',
    fork: (facts: Named & { readonly at: number }) =>
      `${named(facts)} was continued differently in two places: from entry ${facts.at} on, the file is not what is recorded here. ` +
      'Nothing was changed.',
    /** After the sentence that says what became of the file. */
    photosLost: ({ photosLost }: { readonly photosLost: number }) =>
      `${counted(photosLost, 'photo', 'photos')} of it ${photosLost === 1 ? 'is' : 'are'} damaged or missing, in the file and here. The place of each ` +
      'says so; the build is as it was confirmed.',
    /** Before the sentence that says why a file that was opened cannot be used. */
    fileRefused: ({ fileName }: { readonly fileName: string }) => `${fileName}:`,
    engineOpened: ({ name, fileName }: { readonly name: string; readonly fileName: string }) =>
      `${name}, from ${fileName}, is in the list of engines until Bedplate is closed. To keep it, put the file into the ` +
      'folder of engine specs.',
  },

  /** An entry of the record here, and the one that stands in its place in a file. */
  forked: {
    entry: ({ at }: { readonly at: number }) => `Entry ${at}`,
    what: 'What',
    when: 'When',
    who: 'Who',
    code: 'Code',
    here: 'Here',
    inFile: 'In the file',
    unknownEntry: 'an entry that only a newer Bedplate can read',
    whatToDo:
      'Both have the same beginning. Find out which of the two was done on the engine; the other one can be made ' +
      'void on the bench that has it.',
  },
  /** An entry by its kind and what it holds. */
  entryHolds: ({ kind, holds }: { readonly kind: string; readonly holds: string }) => `${kind}: ${holds}`,
  /** What an entry of a build records. */
  entries: {
    'build-started': 'build started',
    'marks-noted': 'marks noted',
    'shells-chosen': 'shells chosen',
    'half-fitted': 'shell fitted',
    'half-taken-out': 'shell taken out',
    'part-fitted': 'part fitted',
    'part-taken-out': 'part taken out',
    'crank-turned': 'crank turned',
    'turning-accepted': 'turning torque outside its limits accepted',
    'turning-voided': 'turning torque void',
    'place-done': 'a place done',
    'place-undone': 'a place undone',
    'rings-fitted': 'rings fitted',
    'rings-taken-off': 'rings taken off',
    'limit-measured': 'measured against limits',
    'limit-accepted': 'reading outside its limits accepted',
    'measured-part-replaced': 'measured part replaced',
    'parts-ticked': 'parts fitted',
    'ticks-removed': 'fitted parts taken back',
    'part-left-over': 'part left over',
    'parts-counted': 'parts counted',
    'photo-added': 'photo added',
    'photo-skipped': 'no photo, with a reason',
    'photo-withdrawn': 'photo withdrawn',
    'revision-taken-over': 'newer revision of the spec taken over',
    'step-reopened': 'step opened again',
    'step-skipped': 'step skipped',
    'skip-taken-back': 'skipped step to be done after all',
    'note-written': 'note written',
    'bead-laid': 'bead laid',
    'bead-wiped-off': 'bead wiped off',
    'check-answered': 'check answered',
    'readings-noted': 'readings noted',
    'readings-withdrawn': 'readings withdrawn',
    'undersize-declared': 'undersize declared',
    'basis-decided': 'decided between marks and readings',
    'shells-pinned': 'shells chosen by hand',
    'shells-released': 'shells no longer chosen by hand',
    'tray-noted': 'tray counted',
    'thread-read': 'plastic gauge read',
    'run-started': 'run started',
    'fasteners-declared-new': 'fasteners declared new',
    'fastener-pulled': 'fastener pulled',
    'pull-taken-back': 'pull taken back',
    'pull-read-again': 'pull read again',
    'problem-noted': 'problem noted',
    'flag-answered': 'flag answered',
    'fastener-loosened': 'fastener loosened',
    'fastener-replaced': 'fastener replaced',
    'pass-repeated': 'pass repeated',
    'run-restarted': 'run begun again',
    'run-paused': 'run paused',
    'run-resumed': 'run resumed',
    'step-confirmed': 'step looked at by a second person',
    'step-sent-back': 'step sent back by a second person',
    'build-finished': 'build finished',
    'build-amended': 'build amended',
    'build-voided': 'build voided',
    'build-handed-over': 'handed over to another bench',
    'build-taken-over': 'taken over by another bench',
    'fork-settled': 'said which line counts',
  },

  /** Two builds of one engine. */
  compared: {
    title: 'Two builds side by side',
    /** After the name of the engine. */
    differences: ({ different, all }: { readonly different: number; readonly all: number }) =>
      `${different} of ${all} things differ.`,
    sameSpec: 'Both were built by the same spec, to the letter.',
    otherSpec: '! They were built by different revisions of the spec: what is asked for may differ too.',
    show: 'Show',
    shown: { differences: 'what differs', all: 'everything' },
    what: 'What',
    parts: {
      bearings: 'Marks and shells',
      checks: 'Checks',
      runs: 'Procedures',
      pulls: 'Pulls',
      steps: 'Steps',
    },
    shells: (facts: {
      readonly housing: string | null
      readonly journal: string | null
      readonly split: Split
      readonly upper: string | null
      readonly lower: string | null
    }) =>
      `housing ${facts.housing ?? '?'}, journal ${facts.journal ?? '?'}: ` +
      pairText({ split: facts.split, upper: facts.upper ?? '–', lower: facts.lower ?? '–' }),
    run: (facts: {
      readonly pulls: number
      readonly takenBack: number
      readonly flags: number
      readonly ownOrder: boolean
    }) =>
      `${counted(facts.pulls, 'pull', 'pulls')}, ${facts.takenBack} taken back, ${counted(facts.flags, 'flag', 'flags')}` +
      (facts.ownOrder ? ', own order' : ''),
    stepDone: ({ at, person }: { readonly at: string; readonly person: string }) => `✓ ${at}, ${person}`,
  },
}
