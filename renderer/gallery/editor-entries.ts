import { en } from '../../core/words/index.ts'
import EditorPage from '../editor/EditorPage.svelte'
import { benchWith } from './at-bench.ts'
import { DraftInMemory } from './draft-in-memory.svelte.ts'
import { engineOf } from './engines.ts'
import { entriesOf, type Entry } from './entry.ts'
import type { Press } from './press.ts'
import type { OnStage } from './shown.ts'

const screen = entriesOf('Specs', 'screen')

const edited = (id: string) => async (shown: OnStage) => {
  const bench = await benchWith(shown)
  const draft = new DraftInMemory(engineOf(id).text, () => bench.language)
  return {
    all: { bench, draft, back: { text: bench.words.parts.enginesAndBuilds, go: () => undefined } },
  }
}
const shows = (name: string, what: string, id: string, press: readonly Press[] = []) =>
  screen(`Editor: ${name}`, what, EditorPage, edited(id), press)
const t = en.editor

export const editorEntries: readonly Entry[] = [
  shows('at its start', 'A spec on its drawing, nothing chosen', 'skerry-3'),
  shows('placing', 'What is placed by the next tap', 'skerry-3', [t.actions.place]),
  shows('position', 'One fastener and its exact place', 'fen-1', [
    t.actions.position,
    en.drawing.list.fastenerState({
      fastener: en.drawing.list.fastener({ number: '1', where: 'saddle 1, flywheel top' }),
      state: en.drawing.list.fastenerStates.waiting,
      more: null,
    }),
  ]),
  shows('order', 'An order in the discs of the drawing', 'skerry-3', [t.actions.order]),
  shows('groups on the drawing', 'The fasteners of one group are filled', 'carr-v2', [t.actions.group]),
  shows('passes', 'The table of passes, as a manual has it', 'skerry-3', [t.sections.passes]),
  shows('groups', 'What the fasteners are', 'fen-1', [t.sections.groups]),
  shows('bearings', 'Bands, walls and the chart with what each cell gives', 'skerry-3', [t.sections.fits]),
  shows('the rest', 'What has no drawing', 'skerry-3', [t.sections.rest]),
  shows('audit', 'What the audit says, each with its place', 'skerry-3', [t.sections.audit]),
]
