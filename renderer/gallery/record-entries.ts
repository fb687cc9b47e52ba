import { createRawSnippet } from 'svelte'
import { done, problem } from '../../core/problem/index.ts'
import ArrivalNotes from '../archive/ArrivalNotes.svelte'
import type { Arrival } from '../archive/opened-files.svelte.ts'
import BuildTable from '../archive/BuildTable.svelte'
import ForkTable from '../archive/ForkTable.svelte'
import ImportPanel from '../archive/ImportPanel.svelte'
import SearchForm from '../archive/SearchForm.svelte'
import SideBySide from '../parts/SideBySide.svelte'
import TakeOut from '../archive/TakeOut.svelte'
import PageFrame from '../parts/PageFrame.svelte'
import BackupTable from '../record/BackupTable.svelte'
import DoctorPanel from '../record/DoctorPanel.svelte'
import Restored from '../record/Restored.svelte'
import VerifyPanel from '../record/VerifyPanel.svelte'
import WrenchForm from '../wrenches/WrenchForm.svelte'
import { draftOf, emptyDraft } from '../wrenches/wrench-draft.ts'
import type { Verification } from '../../core/contract/index.ts'
import { benchAt, benchWith, clientWith, momentOf } from './at-bench.ts'
import { entriesOf, type Entry } from './entry.ts'
import { memoryClient } from './memory-client.ts'
import { published } from './sample-library.ts'
import { sampleJoined, sampleShop, sampleShopLines } from './sample-shop.ts'
import { sampleBackups, sampleVerification, sampleWrenches } from './sample-record.ts'

const part = entriesOf('Record, archive, wrenches', 'page')
const nothing = () => undefined

const verifying = (state: Verification) => ({
  client: memoryClient({ 'verification.read': () => done(state) }),
  build: null,
  action: 'Verify the archive',
})

export const recordEntries: readonly Entry[] = [
  part('Table of builds', 'A page of the archive', BuildTable, () => {
    const lines = ['run in mid pass', 'run with a flag'].map((name, index) => ({
      ...momentOf('skerry-3', name).build.line,
      id: String(index),
    }))
    return {
      'one chosen': { lines, chosen: lines.slice(0, 1), onchoose: nothing, onopen: nothing },
      'of a shop': { lines: sampleShopLines(), onopen: nothing },
    }
  }),
  part('Search', 'What is looked for in the archive', SearchForm, async (shown) => {
    const { search } = await benchWith(shown, {}, {}, sampleShop(sampleJoined))
    await search.look()
    return { 'all builds': { search: (await benchWith(shown)).search }, 'in a shop': { search } }
  }),
  part('Side by side', 'What two builds, or two lines of one, say of the same', SideBySide, () => ({
    'of two': {
      title: 'Bearings',
      columns: ['What', '2026-001 Pump set 7', '2026-002 Pump set 8'],
      rows: [
        { about: 'M1', cells: [{ text: 'J, 40 µm' }, { text: 'K, 36 µm' }], differs: true },
        { about: 'M2', cells: [{ text: 'J, 40 µm', by: 'Ana Ruiz, 2026-03-09 12:00' }, null] },
      ],
    },
  })),
  part('Fork', 'Where a build was continued differently in two places', ForkTable, async (shown) => {
    const { build } = momentOf('skerry-3', 'run in mid pass')
    const [here, there] = build.entries.slice(-2)
    const { specText } = build.opened
    const { bench } = await benchAt(shown, build)
    return { 'two entries': { bench, at: 31, here: here!, there: there!, specText } }
  }),
  part('Taking in', 'An exported build comes in from elsewhere', ImportPanel, () => ({
    waiting: { client: clientWith({}), onopen: nothing, ontaken: nothing },
  })),
  part('Opened files', 'What became of files that the program was asked to open', ArrivalNotes, () => {
    const arrivals: readonly Arrival[] = [
      { number: 1, fileName: 'heron-2.json', result: { kind: 'engine', name: 'Heron 2 pump (demo)' } },
      {
        number: 2,
        fileName: 'notes.bedplate',
        result: { kind: 'refused', problem: problem('import-not-ours', {}) },
      },
      {
        number: 3,
        fileName: 'heron-4.bedplate-spec',
        result: { kind: 'spec', taken: { kind: 'added', line: published } },
      },
    ]
    return { 'an engine, and a file that is none': { arrivals, onopen: nothing, onclose: nothing } }
  }),
  part('Taking out', 'A build goes elsewhere, whole or as tables', TakeOut, () => ({
    waiting: { client: clientWith({}), build: crypto.randomUUID() },
  })),
  part('Backups', 'What can be put back', BackupTable, () => ({
    'two places': { backups: sampleBackups.backups, disabled: false, onrestore: nothing },
    'while one runs': { backups: sampleBackups.backups, disabled: true, onrestore: nothing },
  })),
  part('Restored', 'A backup is in its place', Restored, () => ({
    'with the file before it': { kept: 'record-set-aside.db', ongo: nothing },
  })),
  part('Doctor', 'How the program stands, to be read out over the telephone', DoctorPanel, async (shown) => ({
    'something of each': { bench: await benchWith(shown) },
  })),
  part('Verification', 'Whether all is as it was confirmed', VerifyPanel, () => ({
    'not begun': verifying({ state: 'none' }),
    running: verifying({ state: 'running', build: null, builds: 5, of: 14 }),
    stopped: verifying({ state: 'stopped', build: null }),
    'all as it was': verifying({ ...sampleVerification, breaks: [] }),
    'one broken': verifying(sampleVerification),
  })),
  part('Page frame', 'What stands round a page', PageFrame, async (shown) => ({
    'a title and a way back': {
      ...{ title: 'Record', bench: await benchWith(shown) },
      children: createRawSnippet(() => ({ render: () => '<p translate="no">What the page is about.</p>' })),
    },
  })),
  part('Wrench', 'A wrench as its owner writes it down', WrenchForm, async (shown) => {
    const { rack } = await benchWith(shown)
    return {
      'one with an adapter': { rack, start: draftOf(sampleWrenches[0]!), onleave: nothing },
      'a new one': { rack, start: emptyDraft('new'), onleave: nothing },
    }
  }),
]
