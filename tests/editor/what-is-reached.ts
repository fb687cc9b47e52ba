import {
  inUnitOf,
  unitOfValue,
  valueIn,
  type EditMessage,
  type SpecDocument,
} from '../../core/drafts/index.ts'
import { readDocument } from '../../core/engine/index.ts'
import { sentenceOf, type Problem } from '../../core/problem/index.ts'
import type { Change, DraftAtWork } from '../../renderer/editor/draft/draft-at-work.ts'
import type { EditorDesk } from '../../renderer/editor/editor-desk.svelte.ts'
import type { Control } from './controls.ts'
import { partsChanged } from './parts-of-a-spec.ts'
import { ofEditor } from './rendered.ts'

const { EditorDesk: Desk } = await ofEditor<{ readonly EditorDesk: typeof EditorDesk }>(
  'editor-desk.svelte.ts',
)

/** A draft that keeps nothing of what is done to it, but which parts that would have changed. */
class Tried implements DraftAtWork {
  readonly reached = new Set<string>()
  /** How often something was changed. */
  changes = 0
  readonly ahead = null
  readonly beside = null as never
  readonly findings = []
  readonly typists = new Map<string, string>()
  readonly undoable = null
  readonly redoable = null
  readonly spec
  readonly document: SpecDocument

  constructor(document: SpecDocument) {
    this.document = document
    const read = readDocument(document, 'en')
    if (!read.ok) throw new Error(read.problems.map(sentenceOf).join('\n'))
    this.spec = read.spec
  }
  change(_: EditMessage, make: Change): Promise<Problem | null> {
    const made = make(this.document)
    if (!made.ok) return Promise.resolve(made.problem)
    const read = readDocument(made.value, 'en')
    if (!read.ok) return Promise.resolve(read.problems[0]!)
    const changed = partsChanged(this.document, made.value)
    if (changed.length > 0) this.changes += 1
    for (const part of changed) this.reached.add(part)
    return Promise.resolve(null)
  }
  undo = () => Promise.resolve()
  redo = () => Promise.resolve()
}

/** What is done to a document, and what that has come to. */
export interface Trial {
  readonly desk: EditorDesk
  readonly changes: () => number
}

/** The parts of a document that what is done to it changes. */
export async function reachedBy(
  document: SpecDocument,
  act: (trial: Trial) => unknown,
): Promise<ReadonlySet<string>> {
  const draft = new Tried(document)
  await act({ desk: new Desk(() => draft), changes: () => draft.changes })
  return draft.reached
}

/** What a person may type into a field, of every kind that a spec has; what is none of its own is refused. */
const texts = [
  ...['1.1 – 1.2 mm', '9 to 11 N·m', '14 to 16 °', '1.234 mm', '10 N·m', '15 °', '88 °C', '9 kN'],
  ...['61 mm H6', 'M9×1', '12 ± 1 N·m', '12 ± 1 °', '9.9', '0.004', 'Q', 'New words'],
]
const numbers = [3, 2, 1, 0.5, 0.004]
/** Those of the kind that stands there first. */
function textsLike(now: unknown): readonly string[] {
  const unit = typeof now === 'string' ? unitOfValue(now) : ''
  const isLike = (text: string) => unit !== '' && text.includes(unit)
  return [...texts.filter(isLike), ...texts.filter((text) => !isLike(text))]
}
/** Of a long list, of which any will do. */
const few = 12

/** Does with a control what a person can: into a field is typed until two texts were taken. */
export async function tryOut({ desk, changes }: Trial, control: Control): Promise<void> {
  const typing = async (tried: readonly unknown[], enter: (typed: unknown) => unknown) => {
    const before = changes()
    for (const typed of tried) if (changes() < before + 2) await enter(typed)
  }
  switch (control.kind) {
    case 'field': {
      const { path, kind = 'size', optional = false } = control.props
      await typing(kind === 'number' ? numbers : textsLike(valueIn(desk.document, path)), (typed) =>
        desk.set(path, kind === 'size' ? inUnitOf(String(typed), '') : typed),
      )
      if (optional) await desk.set(path, undefined)
      return
    }
    case 'typed':
      return typing(textsLike(control.props.value), (typed) => control.props.onenter(String(typed)))
    case 'select':
      for (const { value } of control.props.options.slice(0, few)) control.props.onchoose(value)
      return
    case 'tick':
      for (const is of [true, false]) control.props.ontick(is)
      return
    case 'ticks':
      for (const { id } of control.props.all.slice(0, 2)) control.props.ontoggle(id)
      return
    case 'colour':
      control.props.onchoose('#123456')
      return
    default:
      return control satisfies never
  }
}
