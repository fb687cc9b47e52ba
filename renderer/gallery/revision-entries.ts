import { effectsOfRevision } from '../../core/builds/index.ts'
import { differencesBetween, documentIn, drawnDifferences } from '../../core/drafts/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import { problem } from '../../core/problem/index.ts'
import DifferencesTable from '../library/DifferencesTable.svelte'
import NewerRevision from '../revision/NewerRevision.svelte'
import RevisionPage from '../revision/RevisionPage.svelte'
import SideBySide from '../revision/SideBySide.svelte'
import TakeRevision from '../revision/TakeRevision.svelte'
import { benchAt, momentOf } from './at-bench.ts'
import { engineOf } from './engines.ts'
import { entriesOf, type Entry } from './entry.ts'
import { published } from './sample-library.ts'
import type { OnStage } from './shown.ts'

const part = entriesOf('Revisions', 'panel')
const page = entriesOf('Revisions', 'screen')

const id = 'strath-6'
const { text: ownText, spec: ownSpec } = engineOf(id)

/** The spec with another torque, an order the other way round, a bolt moved, one dowel fewer and another one. */
const newerText = (() => {
  const document = documentIn(ownText)
  const [procedure] = document.procedures
  const [first, second, ...others] = document.case.dowels ?? []
  const fasteners = document.fasteners.map((each, index) =>
    index === 1 ? { ...each, at: [document.fasteners[0]!.at[0], each.at[1]] } : each,
  )
  const procedures = document.procedures.map((each) =>
    each === procedure
      ? { ...each, orders: each.orders.map((order) => ({ ...order, sequence: order.sequence.toReversed() })) }
      : each,
  )
  const dowels = first && second ? [second, ...others, { ...first, id: 'extra', at: ['40 mm', '0 mm'] }] : []
  return JSON.stringify({
    ...document,
    procedures,
    fasteners,
    case: { ...document.case, dowels },
    revision: '2',
  })
})()
const newer = {
  line: { ...published, engine: id, name: ownSpec.name, revision: 2, revisionName: '2' },
  text: newerText,
}

async function at(shown: OnStage, name: string, step: string) {
  const { build } = momentOf(id, name, step)
  return benchAt(shown, build, { newer })
}

async function effects(shown: OnStage, name: string, step: string) {
  const onBench = await at(shown, name, step)
  const { spec, state } = onBench.openBuild
  const read = readSpec(newerText, shown.language.language)
  if (!read.ok) throw new Error('the newer revision cannot be read')
  const from = { spec, document: documentIn(ownText), sha256: 'a' }
  const to = { spec: read.spec, document: documentIn(newerText), sha256: 'b' }
  return { ...onBench, effects: effectsOfRevision(from, to, state), problem: null, onTake: () => undefined }
}

export const revisionEntries: readonly Entry[] = [
  page(
    'Newer revision of a build’s spec',
    'What differs, and how it is taken over',
    RevisionPage,
    async (shown) => ({ 'much was done': await at(shown, 'check to answer', 'last-look') }),
    [{ appears: 'Taking it over' }],
  ),
  part('A newer revision is there', 'Beside the general notes', NewerRevision, async (shown) => ({
    all: await at(shown, 'check to answer', 'last-look'),
  })),
  part(
    'Taking a revision over',
    'What is open again, what is undone first, and why',
    TakeRevision,
    async (shown) => ({
      'much is open again': await effects(shown, 'check to answer', 'last-look'),
      refused: {
        ...(await effects(shown, 'check to answer', 'last-look')),
        problem: problem('revision-not-taken-apart', { first: 'Sump on' }),
      },
    }),
  ),
  part(
    'Two revisions on the drawing',
    'Side by side, with a ring round what differs',
    SideBySide,
    async (shown) => {
      const onBench = await at(shown, 'check to answer', 'last-look')
      const read = readSpec(newerText, shown.language.language)
      if (!read.ok) throw new Error('the newer revision cannot be read')
      const all = drawnDifferences(documentIn(ownText), documentIn(newerText))
      const face = all[0]!.face
      return {
        all: {
          ...onBench,
          ...{ face, before: onBench.openBuild.spec, after: read.spec },
          differences: all.filter((each) => each.face === face),
        },
      }
    },
  ),
  part('What differs, value by value', 'Between two revisions', DifferencesTable, async (shown) => ({
    some: {
      ...(await at(shown, 'check to answer', 'last-look')),
      ...{ caption: 'What differs' },
      found: differencesBetween(
        shown.language.words,
        documentIn(ownText),
        documentIn(newerText),
        shown.language.language,
      ),
    },
    none: {
      ...(await at(shown, 'check to answer', 'last-look')),
      ...{ caption: 'What differs', found: [] },
    },
  })),
]
