import { documentIn, documentText, valuesToCheck, type OpenDocument } from '../../core/drafts/index.ts'
import { fieldPicture, fieldPictures } from '../../core/layout/index.ts'
import { en } from '../../core/words/index.ts'
import EditorPage from '../editor/EditorPage.svelte'
import FieldPicture from '../editor/fields/FieldPicture.svelte'
import type { Bench } from '../bench/bench.svelte.ts'
import { benchWith } from './at-bench.ts'
import { gearsPhoto } from '../../tests/photos/gears-photo.ts'
import { DraftInMemory } from './draft-in-memory.svelte.ts'
import { engineOf } from './engines.ts'
import { entriesOf, type Entry } from './entry.ts'
import { PicturesInMemory } from './pictures-in-memory.ts'
import type { Press } from './press.ts'
import type { OnStage } from './shown.ts'

const screen = entriesOf('Specs', 'screen')
const page = entriesOf('Specs', 'page')

/** What is changed in a demo before it is shown. */
type Change = (document: OpenDocument) => void

const edited = (id: string, change: Change) => async (shown: OnStage) => {
  const bench = await benchWith(shown)
  const draft = new DraftInMemory(changed(engineOf(id).text, change), () => bench.language)
  return {
    all: { bench, draft, back: backIn(bench) },
  }
}
/** Whichever language it turns to. */
function backIn(bench: Bench) {
  return {
    get text() {
      return bench.words.parts.enginesAndBuilds
    },
    go: () => undefined,
  }
}
function changed(text: string, change: Change): string {
  const document = documentIn(text)
  change(document)
  return documentText(document)
}
const shows = (
  name: string,
  what: string,
  id: string,
  press: readonly Press[] = [],
  change: Change = () => undefined,
) => screen(`Editor: ${name}`, what, EditorPage, edited(id, change), press)
const t = en.editor

/** A spec with a picture under its first face. */
const pictured = async (shown: OnStage) => {
  const bench = await benchWith(shown)
  const { text } = engineOf('fen-1')
  const pictures = new PicturesInMemory()
  const pins = [
    { px: { x: 0, y: 120 }, at: { x: -20_000_000, y: 0 } },
    { px: { x: 320, y: 120 }, at: { x: 140_000_000, y: 0 } },
  ] as const
  await pictures.put(documentIn(text).case.faces[0]!.id, { pins, opacity: 80, shown: true }, gearsPhoto)
  const draft = new DraftInMemory(text, () => bench.language, pictures)
  return {
    all: { bench, draft, back: backIn(bench) },
  }
}

/** Each picture that stands beside a field. */
const fieldsDrawn = () => {
  const fields = Object.keys(fieldPictures)
  const first = (field: string) => fields.find((each) => fieldPictures[each] === fieldPictures[field])
  return Object.fromEntries(
    fields
      .filter((field) => first(field) === field)
      .map((field) => [field, { picture: fieldPicture(field)! }]),
  )
}

export const editorEntries: readonly Entry[] = [
  shows('at its start', 'A spec on its drawing, nothing chosen', 'skerry-3'),
  page('Pictures of fields', 'What each field measures', FieldPicture, fieldsDrawn),
  shows('placing', 'What is placed by the next tap', 'skerry-3', [t.actions.place]),
  shows('case', 'What the case is, its bearings and its crank by numbers', 'holm-2', [
    { group: t.forms, button: t.sections.case },
  ]),
  shows('faces', 'How each face lies, its gasket and its beads', 'fen-1', [t.sections.faces]),
  shows('placing bearings', 'Handles at the bearings of a face', 'skerry-3', [
    { choose: t.drawn.subject, option: t.drawn.subjects.bearings },
    t.actions.place,
  ]),
  shows('outline', 'The corners of a face', 'fen-1', [
    { choose: t.drawn.subject, option: t.drawn.subjects.outline },
    t.actions.place,
  ]),
  shows('beads', 'The points of a bead and the zones it keeps out of', 'fen-1', [
    { choose: t.drawn.subject, option: t.drawn.subjects.beads },
    t.actions.place,
  ]),
  screen('Editor: picture', 'A picture under the drawing', EditorPage, pictured, [
    t.actions.picture,
    { appears: t.picture.show },
  ]),
  screen('Editor: points of a picture', 'The next tap is point 1', EditorPage, pictured, [
    t.actions.picture,
    { appears: t.picture.show },
    t.picture.twoPoints,
  ]),
  shows('no picture yet', 'How one comes under the drawing', 'fen-1', [t.actions.picture]),
  shows('position', 'One fastener and its exact place', 'fen-1', [
    t.actions.position,
    en.drawing.list.fastener({ number: '1', where: 'saddle 1, flywheel top' }),
  ]),
  shows('order', 'An order in the discs of the drawing', 'skerry-3', [t.actions.order]),
  shows('groups on the drawing', 'The fasteners of one group are filled', 'carr-v2', [t.actions.group]),
  shows('passes', 'The table of passes, as a manual has it', 'skerry-3', [t.sections.passes]),
  shows('groups', 'What the fasteners are', 'fen-1', [t.sections.groups]),
  shows('field with its picture', 'What the field measures, drawn', 'fen-1', [
    t.sections.groups,
    { field: t.fields.grip },
  ]),
  shows('bearings', 'Bands, walls and the chart with what each cell gives', 'skerry-3', [t.sections.fits]),
  shows('all of bearings', 'What few manuals give of bearings, each opened', 'skerry-3', [
    ...[t.sections.fits, t.groups.more, t.more.measuring.title, t.more.seating.title, t.more.warm.title],
  ]),
  shows('nothing more of bearings', 'A form that adds what the manual gives', 'fen-1', [
    ...[t.sections.fits, t.groups.more, t.more.notSaid({ of: t.more.warm.title })],
  ]),
  shows('all of a group', 'Face under the head, load and layers of fasteners', 'fen-1', [
    ...[t.sections.groups, t.groups.more, t.more.notSaid({ of: t.more.headFace.title })],
    t.more.notSaid({ of: t.more.workingLoad.title }),
  ]),
  shows('rings', 'What a ring must measure, by its limits', 'skerry-3', [
    { group: t.forms, button: t.sections.case },
    ...[t.drawn.rings.title, t.more.ringTitle({ ring: 'Top ring' })],
  ]),
  shows('steps', 'The steps in their order, one open with all that it has', 'moor-flat-4', [
    t.sections.steps,
    t.steps.of({ number: 1, step: '' }),
  ]),
  shows('parts and cautions', 'What is ordered, and what can hurt', 'moor-flat-4', [t.sections.parts]),
  shows('the rest', 'What has no drawing', 'skerry-3', [t.sections.rest]),
  shows('check', 'A value beside its page, typed unseen', 'skerry-3', [t.sections.check], (document) => {
    document.source = {
      kind: 'entered',
      from: 'Shop notes, 3rd edition',
      enteredBy: 'Nobody here',
      on: '2026-03-02',
    }
    const same = { by: 'Bo Lind', on: '2026-03-03', how: 'same' } as const
    const values = valuesToCheck(document)
    const first = values.findIndex(({ kind }) => kind === 'torque')
    document.checks = values.slice(0, first).map(({ path }) => ({ path, ...same }))
    document.pages = [{ path: 'procedures[0]', page: '7-12', by: 'Ada Brook', on: '2026-03-02' }]
  }),
  shows('audit', 'What the audit says, each with its place', 'skerry-3', [t.sections.audit]),
  shows(
    'doubts',
    'A doubt that is accepted with a reason, and one that was',
    'skerry-3',
    [t.sectionWithFindings({ section: t.sections.audit, count: 1 }), t.audit.accept],
    (document) => {
      document.cautions.shift()
      document.source = {
        ...{ kind: 'entered', from: 'Shop notes, 3rd edition', enteredBy: 'Ada Brook', on: '2026-03-02' },
      }
      const why = { reason: 'One of a kind: there is nobody else here who knows it', by: 'Ada Brook' }
      document.accepted = [{ code: 'source-unchecked', path: 'source.checkedBy', ...why, on: '2026-03-02' }]
    },
  ),
]
