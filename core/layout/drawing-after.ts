import type { EngineSpec } from '../engine/index.ts'
import type { Words } from '../words/index.ts'
import { drawingOf, hasCallout, numberedOn, type Drawing } from './drawing.ts'
import type { BearingFact, DrawingFacts, Sheet, View } from './facts.ts'
import { numberOf } from './labels/discs.ts'

/**
 * As `drawingOf`, after the drawing before it: where nothing has changed that places depend on, as between two pulls, everything
 * stays where it was, and is not laid out again.
 */
export function drawingAfter(
  last: Drawing | null,
  words: Words,
  spec: EngineSpec,
  facts: DrawingFacts,
  view: View,
  sheet: Sheet,
): Drawing {
  const stays =
    last !== null &&
    last.words === words &&
    last.viewText === words.drawing.view &&
    last.spec === spec &&
    last.view.from === view.from &&
    last.view.turn === view.turn &&
    sameRoom(last.sheet, sheet) &&
    samePlaces(last, facts)
  if (!stays) return drawingOf(words, spec, facts, view, sheet)
  return { ...last, sheet, facts, numbered: numberedOn(sheet, facts, last.discs) }
}

function sameRoom(one: Sheet, other: Sheet): boolean {
  return one.widthPx === other.widthPx && one.heightPx === other.heightPx && one.capitalPx === other.capitalPx
}

/** Whether a name says what it said, a disc has the number that it had, and the callout its place. */
function samePlaces({ facts: before, here, content }: Drawing, facts: DrawingFacts): boolean {
  if (before.face !== facts.face || before.subject !== facts.subject) return false
  if (hasCallout(before) !== hasCallout(facts)) return false
  if (content.beads && Object.keys(before.beads).join() !== Object.keys(facts.beads).join()) return false
  if (
    content.clearances &&
    here.bearings.some(({ id }) => !sameName(before.bearings[id], facts.bearings[id]))
  )
    return false
  return here.fasteners.every((fastener) => numberOf(fastener, before) === numberOf(fastener, facts))
}

function sameName(one: BearingFact | undefined, other: BearingFact | undefined): boolean {
  return (
    one?.clearance === other?.clearance &&
    one?.withinLimits === other?.withinLimits &&
    one?.flag === other?.flag
  )
}
