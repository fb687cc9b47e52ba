import { problem } from '../../core/problem/index.ts'
import ArchivePage from '../archive/ArchivePage.svelte'
import ComparePage from '../archive/ComparePage.svelte'
import LibraryPage from '../library/LibraryPage.svelte'
import RecordPage from '../record/RecordPage.svelte'
import RescuePage from '../record/RescuePage.svelte'
import BenchCard from '../card/BenchCard.svelte'
import RingCard from '../card/RingCard.svelte'
import BuildWindow from '../build-window/BuildWindow.svelte'
import ClampMapPage from '../clamp/ClampMapPage.svelte'
import PeoplePage from '../people/PeoplePage.svelte'
import WhoDialog from '../people/WhoDialog.svelte'
import { helpWords, type HelpTopicId } from '../../core/words/index.ts'
import HelpPage from '../help/HelpPage.svelte'
import Engines from '../engines/Engines.svelte'
import InstrumentsPage from '../settings/InstrumentsPage.svelte'
import ScreenAndKeys from '../settings/ScreenAndKeys.svelte'
import SheetPage from '../sheet/SheetPage.svelte'
import Wrenches from '../wrenches/Wrenches.svelte'
import TrayPage from '../tray/TrayPage.svelte'
import { playedMachine, sampleInstruments } from './sample-instruments.ts'
import { benchAt, benchWith, momentOf } from './at-bench.ts'
import { entriesOf, type Entry } from './entry.ts'
import { momentNames } from './moments.ts'
import type { OnStage } from './shown.ts'

const engine = 'skerry-3'
const screen = entriesOf('Screens', 'screen')
const ofBuild = entriesOf('Screens of a build', 'screen')

const builds = () => [
  momentOf(engine, 'run in mid pass').build,
  momentOf('strath-6', 'run with a flag').build,
]
const at = (shown: OnStage, moment: string) => benchAt(shown, momentOf(engine, moment).build)
/** The procedure that is next in a build, with its bench. */
async function ofProcedure(shown: OnStage) {
  const { step } = momentOf(engine, 'turn by an angle')
  const procedure = step.kind === 'run-procedure' ? step.procedure : ''
  return { ...(await at(shown, 'turn by an angle')), procedure }
}

/** Moments that the engine above does not have: another that has them, and the step. */
const elsewhere: Readonly<Record<string, readonly [engine: string, step: string]>> = {
  'gap to measure': ['rill-5', 'bedplate-run'],
  'length to measure': ['strath-6', 'rods-run'],
  'stretch to measure': ['strath-6', 'rods-run'],
  'reading between passes': ['strath-6', 'case-run'],
  'loosening backwards': ['carr-v2', 'case-run'],
  'recheck to repeat': ['rill-5', 'sump-run'],
  'stretch to tighten to': ['quay-3', 'rods-run'],
  'wait between passes': ['quay-3', 'drive-run'],
  'single-use part used again': ['moor-flat-4', 'seals-in'],
  'limits to measure': ['moor-flat-4', 'skirts'],
  'reading outside its limits': ['moor-flat-4', 'skirts'],
  'ring gap to measure': ['moor-flat-4', 'ring-gaps'],
  'ring gap too narrow': ['moor-flat-4', 'ring-gaps'],
  'ring gaps to set': ['moor-flat-4', 'rings-on'],
  'parts to put in one by one': ['moor-flat-4', 'pins-ready'],
  'crank to turn': ['firth-v8', 'turn-alone'],
  'crank too stiff': ['firth-v8', 'turn-crank'],
  'places to oil': ['moor-flat-4', 'oil-mains'],
  'places to clean': ['moor-flat-4', 'clean-case'],
  'parts to turn the right way': ['moor-flat-4', 'piston-way'],
  'marks to set': ['moor-flat-4', 'timing'],
  'marks to look at again': ['moor-flat-4', 'timing'],
  'something to note': ['moor-flat-4', 'plate'],
  'step skipped': ['strath-6', 'flange-true'],
  'waits for a second person': ['strath-6', 'turn-crank'],
  'step to be done again': ['strath-6', 'turn-crank'],
  'photo to take': ['holm-2', 'gear-photo'],
  'photos taken': ['holm-2', 'gear-photo'],
  'photo left out': ['holm-2', 'gear-photo'],
  'parts to count': ['moor-flat-4', 'count'],
  'parts all there': ['moor-flat-4', 'count'],
}

const windowAt = (moment: string) => async (shown: OnStage) => {
  const [of, step] = elsewhere[moment] ?? [engine]
  const { build } = momentOf(of, moment, step)
  const at = await benchAt(shown, build, moment === secondWanted ? { people } : {})
  // What is done already is shown at its own step, not at the next one.
  if (step !== undefined && lookedBackAt.has(moment)) at.openBuild.goTo(step)
  return { all: at }
}
const secondWanted = 'waits for a second person'
const lookedBackAt: ReadonlySet<string> = new Set(['photos taken', 'photo left out', 'step skipped'])
/** The same as the build that is guided. */
const guidedAt = (moment: string) => async (shown: OnStage) => {
  const { build } = momentOf(engine, moment)
  const guide = { build: build.begun.id, read: null }
  const bench = await benchWith(shown, { builds: [build.branch()], preferences: { guide } })
  await bench.enterBuild(guide.build)
  if (bench.place.at !== 'build') throw new Error('the guided build does not open')
  return { all: { bench, openBuild: bench.place.openBuild } }
}

/** Small forms and lists on the bench: what it is, at which moment, and what is pressed to get there. */
const pressed: readonly (readonly [string, string, ...string[]])[] = [
  ['All steps', 'run in mid pass', 'All steps'],
  ['View', 'run in mid pass', 'View'],
  ['Bench view', 'run in mid pass', 'Bench view'],
  ['Card of a fastener', 'run in mid pass', 'Fastener 4'],
  ['Card of a shell', 'shells proposed', 'Saddle M2'],
  ['Why these shells', 'shells proposed', 'M2'],
  ['Measuring', 'shells proposed', 'M2', 'Measure'],
  ['Tray', 'shells proposed', 'From the tray'],
  ['Problem', 'run in mid pass', '! Problem'],
  ['Pause', 'run in mid pass', 'Pause'],
  ['Taking back', 'run in mid pass', '⌫'],
  ['Recheck begun again', 'recheck to repeat', 'It moved'],
  ['What the pull does', 'turn by an angle', 'What this pull does'],
]

const fault = problem('number-twice', { number: '4', face: 'Main joint' }, 'fasteners.3.number')
const people = [
  {
    ...{ id: '01956f6c-8a00-7000-8000-000000000001', name: 'A. Ruiz', role: 'mechanic' as const },
    hasBadge: true,
  },
  {
    ...{ id: '01956f6c-8a00-7000-8000-000000000002', name: 'B. Lind', role: 'apprentice' as const },
    hasBadge: false,
  },
].map((person) => ({ ...person, hasPin: person.hasBadge, present: !person.hasBadge }))
const faulty = {
  ...{ id: 'ketch-1', name: 'Ketch 1 bilge pump', summary: 'Its file has a fault.', revision: '1' },
  ...{ demo: true, lookedAt: [], doubts: [], faults: [fault] },
}
const lost = problem('record-damaged', { file: 'bedplate.sqlite', found: 'pages' })

const helpAt = (topic: HelpTopicId) => async (shown: OnStage) => ({
  all: {
    bench: await benchWith(shown),
    help: await helpWords[shown.language.language](),
    ...{ language: shown.language.language, topic },
  },
})

export const screenEntries: readonly Entry[] = [
  screen('Start page, first start', 'The engines, before there is a build', Engines, async (shown) => ({
    all: { bench: await benchWith(shown) },
  })),
  screen('Start page', 'Builds on the bench, and an engine with a fault', Engines, async (shown) => ({
    all: { bench: await benchWith(shown, { builds: builds(), faulty: [faulty] }) },
  })),
  screen(
    'Start of a build',
    'What is asked before the first step',
    Engines,
    async (shown) => ({ all: { bench: await benchWith(shown) } }),
    ['Skerry 3'],
  ),
  screen('Wrenches', 'The wrenches of the shop', Wrenches, async (shown) => ({
    all: { bench: await benchWith(shown), onback: () => undefined },
  })),
  screen(
    'Screen and keys',
    'How the screen is measured and which keys there are',
    ScreenAndKeys,
    async (shown) => ({
      all: { bench: await benchWith(shown) },
    }),
  ),
  screen(
    'Instruments and voice',
    'Instruments on serial lines, and prompts said aloud',
    InstrumentsPage,
    async (shown) => ({
      'in a browser without either': { bench: await benchWith(shown) },
      'two written down': {
        bench: await benchWith(
          shown,
          { preferences: { instruments: sampleInstruments, speaks: true } },
          playedMachine,
        ),
      },
    }),
  ),
  screen('People', 'Who works at this bench', PeoplePage, async (shown) => ({
    all: { bench: await benchWith(shown, { people }), openBuild: null },
  })),
  screen('Who is at the bench', 'Chosen by a tap, a name or a badge', WhoDialog, async (shown) => ({
    all: { bench: await benchWith(shown, { people }), choosing: { who: null, problem: null } },
  })),
  screen('Archive', 'Builds to be found again', ArchivePage, async (shown) => ({
    all: { bench: await benchWith(shown, { builds: builds() }) },
  })),
  screen('Library', 'Engine specs of the shop, and those being written', LibraryPage, async (shown) => ({
    all: { bench: await benchWith(shown) },
  })),
  screen(
    'Library, revisions',
    'An engine of the library with what differs between its revisions',
    LibraryPage,
    async (shown) => ({ all: { bench: await benchWith(shown) } }),
    [{ appears: '3 builds' }, 'Heron 4', { appears: 'From revision 1 to 2' }, 'From revision 1 to 2'],
  ),
  screen(
    'Library, new engine',
    'What is asked before a bare case is drawn',
    LibraryPage,
    async (shown) => ({ all: { bench: await benchWith(shown) } }),
    ['New engine'],
  ),
  screen('Comparison', 'Two builds side by side', ComparePage, async (shown) => {
    const [one, other] = [await at(shown, 'run in mid pass'), await at(shown, 'run with a flag')]
    return { all: { bench: one.bench, first: one.openBuild, second: other.openBuild } }
  }),
  screen('Record', 'Backups, verification, doctor', RecordPage, async (shown) => ({
    all: { bench: await benchWith(shown) },
  })),
  screen('Help', 'A topic with a drawing of the demo engine', HelpPage, helpAt('angle'), [
    { appears: 'Demo engine' },
  ]),
  screen('Help on rings', 'A topic with a small picture', HelpPage, helpAt('rings')),
  screen('Glossary', 'Every word, with its meaning and its translations', HelpPage, helpAt('run'), [
    'Glossary',
  ]),
  screen('Rescue', 'The record cannot be used', RescuePage, async (shown) => ({
    all: { bench: await benchWith(shown), problem: lost },
  })),

  ...momentNames.map((name) =>
    ofBuild(capital(name), `The bench in a build: ${name}`, BuildWindow, windowAt(name)),
  ),
  ...pressed.map(([name, moment, ...texts]) =>
    ofBuild(name, `The bench after “${texts.join('”, “')}”`, BuildWindow, windowAt(moment), texts),
  ),
  ofBuild('Guided', 'A note of the help under the drawing', BuildWindow, guidedAt('marks to note')),
  ofBuild('Guided run', 'A note beside a procedure', BuildWindow, guidedAt('run in mid pass')),
  ofBuild('Labels', 'What to order, and labels for the tray', TrayPage, async (shown) => ({
    all: await at(shown, 'half of the shells fitted'),
  })),
  ofBuild('Sheet', 'The build sheet in the middle of a build', SheetPage, async (shown) => ({
    all: await at(shown, 'run with a flag'),
  })),
  ofBuild('Bench card', 'A procedure on paper', BenchCard, async (shown) => ({
    all: await ofProcedure(shown),
  })),
  ofBuild('Ring card', 'Where the gaps of the rings stand, on paper', RingCard, async (shown) => {
    const { build } = momentOf('moor-flat-4', 'ring gaps to set', 'rings-on')
    return { all: { ...(await benchAt(shown, build)), rings: 'rings' } }
  }),
  ofBuild('Clamp map', 'How bolts take load from each other', ClampMapPage, async (shown) => ({
    all: await ofProcedure(shown),
  })),
]

function capital(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1)
}
