import type { SpecDocument } from '../../../core/drafts/index.ts'

/**
 * The field of a spec that is typed into, as `fieldPicture` knows it: empty for one that is none, undefined where nothing is
 * typed.
 */
export function fieldShown(target: EventTarget | null, document: SpecDocument): string | undefined {
  const isTyped =
    target instanceof HTMLTextAreaElement ||
    (target instanceof HTMLInputElement && target.type !== 'checkbox')
  if (!isTyped) return undefined
  const { field, path = '' } = target.closest<HTMLElement>('[data-field], [data-path]')?.dataset ?? {}
  return field ?? fieldAt(path).replace(/^procedures\.passes/, () => ofItsKind(path, document))
}

/** `fasteners[3].at[0]` is `fasteners.at.0`, `fastenerGroups[1].thread.pitch` `fastenerGroups.thread.pitch`. */
export function fieldAt(path: string): string {
  return path
    .replace(/\b(at|size)\[([01])\]$/, '$1.$2')
    .replace(/\b(path|outline)\[\d+\]\[([01])\]$/, '$1.$2')
    .replaceAll(/\[\d+\]/g, '')
}

/** What is measured in a pass depends on its kind. */
function ofItsKind(path: string, document: SpecDocument): string {
  const [, procedure, pass] = /^procedures\[(\d+)\]\.passes\[(\d+)\]/.exec(path) ?? []
  const kind = document.procedures[Number(procedure)]?.passes[Number(pass)]?.kind
  return kind === undefined ? 'procedures.passes' : `procedures.passes.${kind}`
}
