import { isAtOrIn, thingAt } from '../../../core/drafts/index.ts'
import type { Problem } from '../../../core/problem/index.ts'
import type { EditorDesk } from '../editor-desk.svelte.ts'
import type { OrderWork } from '../orders/order-work.svelte.ts'
import type { PlaceWork } from '../actions/place-work.svelte.ts'
import { sectionOf, type Section } from '../sections.ts'

/** Puts the editor to where a finding is mended, with the action that mends it, and says in which of its parts that is. */
export function followFinding(
  { desk, order, work }: { readonly desk: EditorDesk; readonly order: OrderWork; readonly work: PlaceWork },
  problem: Problem,
): Section {
  const { document } = desk
  const { code, path } = problem
  desk.follow(problem)
  const section = sectionOf(problem)

  const [, procedure, at] = /^procedures\[(\d+)\]\.orders\[(\d+)\]/.exec(path) ?? []
  const ordered = procedure === undefined ? undefined : document.procedures[Number(procedure)]
  const tapped = ordered?.orders[Number(at)]
  if (ordered !== undefined && tapped !== undefined) {
    desk.look(ordered.face)
    desk.begin('order')
    order.choose({ procedure: ordered.id, order: tapped.id })
    return section
  }
  const [, number] = /^beads\[(\d+)\]\.path\b/.exec(path) ?? []
  const bead = number === undefined ? undefined : document.beads?.[Number(number)]
  if (bead !== undefined) {
    desk.look(bead.face)
    desk.work('beads')
    desk.begin('place')
    work.choose('bead-point')
    work.bead = bead.id
    return section
  }
  if (code === 'fasteners-none') desk.begin('place')
  const found = section === 'check' || section === 'fits' ? null : thingAt(document, path)
  if (found === null) return section
  if (code === 'group-never-tightened') {
    desk.look(found.face)
    desk.begin('order')
  } else {
    desk.show(found, found.face)
    desk.begin('position')
  }
  return 'drawing'
}

/** Scrolls a form to the field of that place of the document, or to what that field is part of, and puts the cursor there. */
export function goToPlace(form: HTMLElement, path: string): void {
  const places = [...form.querySelectorAll<HTMLElement>('[data-path]')].flatMap((element) => {
    const of = element.dataset['path'] ?? ''
    return isAtOrIn(path, of) ? [{ element, of }] : []
  })
  const [nearest] = places.toSorted((one, other) => other.of.length - one.of.length)
  if (nearest === undefined) {
    form.scrollTop = 0
    return
  }
  nearest.element.scrollIntoView({ block: 'center' })
  nearest.element.querySelector<HTMLElement>('input, select, textarea')?.focus({ preventScroll: true })
}
