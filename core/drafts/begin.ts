import type { SpecDocument } from '../engine/index.ts'
import { checkState } from './checking/index.ts'

/** Who begins a draft, of what, and when. */
export interface DraftBeginning {
  readonly id: string
  readonly name: string
  readonly person: string
  /** The manual that the numbers come from, with its edition. */
  readonly from: string
  /** ISO 8601. */
  readonly on: string
}

/** A copy of a spec as the beginning of another engine's. Where the copied numbers are invented, the source says so until all were replaced. */
export function copyOf(spec: SpecDocument, { id, name, person, from, on }: DraftBeginning): SpecDocument {
  const { checks: _, accepted: __, pages: ___, typedBy: ____, ...rest } = spec
  const copiedFrom = spec.source.kind === 'demo' ? spec.id : spec.source.copiedFromDemo
  return {
    ...rest,
    ...{ id, name, revision: '1' },
    source: {
      ...{ kind: 'entered', from, enteredBy: person, on },
      ...(copiedFrom !== undefined && { copiedFromDemo: copiedFrom }),
    },
  }
}

/**
 * The beginning of an engine's next revision: as it is, with who entered and who checked each value. What is changed in it is typed by who
 * changes it. It is checked as a whole where each value is, against the same edition of the manual.
 */
export function revisionOf(
  spec: SpecDocument,
  {
    person,
    from,
    on,
    revision,
  }: Pick<DraftBeginning, 'person' | 'from' | 'on'> & { readonly revision: number },
): SpecDocument {
  const { source } = spec
  const now = { ...spec, revision: String(revision) }
  if (source.kind === 'demo')
    return { ...now, source: { kind: 'entered', from, enteredBy: person, on, copiedFromDemo: spec.id } }
  const { checkedBy, ...unchecked } = source
  const isChecked = from === source.from && checkState(spec).left.length === 0
  return {
    ...now,
    source: { ...unchecked, from, on, ...(isChecked && checkedBy !== undefined && { checkedBy }) },
  }
}
