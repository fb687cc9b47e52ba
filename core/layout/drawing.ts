import { inMillimetres } from '../quantity/index.ts'
import type { EngineSpec } from '../engine/index.ts'
import type { Words } from '../words/index.ts'
import { minimalBoxes } from './parts/bearing-size.ts'
import { boxAround, type Point } from '../plane/index.ts'
import { contents, type Content } from './content.ts'
import { caseOnSheet, discLanes, longEdges } from './case/case-on-sheet.ts'
import { coveredBy, drawnPieces } from './crank/drawn-crank.ts'
import type { Piece } from './crank/pieces.ts'
import { bareDiscs, discsOf, type Disc } from './labels/discs.ts'
import { endMargins, endNames, type EndNames } from './labels/ends.ts'
import { titleInset, titleLines } from './labels/face-title.ts'
import type { DrawingFacts, Sheet, View } from './facts.ts'
import { deeperLane, placedInLanes, type LaneDepths, type LaneDisc } from './labels/fastener-lanes.ts'
import { besideNext } from './parts/fastener-state.ts'
import { stackSize, type Line } from './labels/label.ts'
import type { Span } from './labels/lane-span.ts'
import type { LaneName } from './labels/lane-name.ts'
import { namesOf } from './labels/names.ts'
import { lanesOn, type LanesOfNames } from './names-in-lanes.ts'
import { onFace, type OnFace } from './case/on-face.ts'
import { openingsOf } from './case/openings.ts'
import { bossesOf, caseFaceOf, outlineOf, type Boss } from './case/outline.ts'
import { beyondBox, overhangOf } from './case/overhang.ts'
import type { Box, Shape } from './scene/scene.ts'
import { mostOfMargins, mostStretch, planOf, type SheetPlan } from './sheet-plan.ts'
import { calloutHeight, sizesOn, type Sizes } from './sizes.ts'
import { acrossAnEnd, projectionOf, type Projection } from './view.ts'

/** One face being drawn: the spec's part in it, the way it lies on the sheet, and where everything round it stands. */
export interface Drawing {
  readonly words: Words
  /** A message of the table it was drawn with: words that follow the language are the same object in all of them. */
  readonly viewText: Words['drawing']['view']
  readonly spec: EngineSpec
  readonly here: OnFace
  readonly facts: DrawingFacts
  readonly content: Content
  readonly view: View
  readonly sheet: Sheet
  readonly place: Projection
  /** Unit steps on the sheet for growing x and for growing y. */
  readonly along: Point
  readonly across: Point
  /** How many times larger the engine is drawn across than along. */
  readonly stretch: number
  /** In mm of the engine's own frame. */
  readonly outline: readonly Point[]
  readonly openings: readonly Box[]
  readonly bosses: readonly Boss[]
  /** The crank, where it lies open on this face; else none. */
  readonly crank: readonly Piece[]
  /** The edge of the face on the sheet, far enough out that the symbols of fasteners lie inside. */
  readonly edge: readonly Point[]
  /** What the face takes on the sheet. */
  readonly body: Box
  /** Nose and drive end, with the names of the halves beside it. */
  readonly endShapes: readonly Shape[]
  readonly frame: Box
  /** One pixel of the sheet, in mm along the engine. */
  readonly px: number
  readonly sizes: Sizes
  readonly discs: readonly Disc[]
  /** Numbers beside the case, of a face too full for them; null where each stands at its fastener. */
  readonly laneDiscs: readonly LaneDisc[] | null
  /** What they take beyond the edges of the case, in px. */
  readonly laneDepths: { readonly before: number; readonly after: number }
  /** The fasteners that keep their numbers for somebody who reads from afar; null for all. */
  readonly numbered: ReadonlySet<string> | null
  readonly title: readonly Line[]
  /** From the sheet's top, the height of its capitals and the room for its width, in px; null where nothing can be next. */
  readonly calloutPlace: CalloutPlace | null
  readonly ends: EndNames
  readonly names: readonly LaneName[]
  readonly lanes: LanesOfNames
}

interface CalloutPlace {
  readonly top: number
  readonly capital: number
  readonly widthPx: number
}

/** The free strip along the sheet's edges, in px. */
const edgeOfSheet = 10
/** The callout takes no more of the sheet's height than this, its cell included. */
const mostOfHeight = 0.16
/** Capitals in it that are larger than the reading distance asks for take no more than this of the sheet's height. */
const usualOfHeight = 0.05
/** The callout stands beside a case that is drawn larger by so much there than under it. */
const worthACallout = 1.08
/** In a column of so many capitals: what a flag says is cut off in the second one. */
const calloutColumns = [14, 10] as const
/** Beside a case that stands on the sheet there has to be room for the names of its ends: the column takes no more of the width. */
const mostOfWidth = 0.5
const none: LaneDepths = { before: 0, after: 0 }
/** So many times at the most it is asked again what the room left over holds. */
const mostRounds = 10

export function drawingOf(
  words: Words,
  spec: EngineSpec,
  facts: DrawingFacts,
  view: View,
  sheet: Sheet,
): Drawing {
  const here = onFace(spec, facts.face)
  const content = contents[facts.subject]
  const sizes = sizesOn(sheet)
  const unstretched = projectionOf(here.face.plane, view)
  const along = unstretched(1, 0)
  const across = unstretched(0, 1)
  const lying = along.x !== 0
  const bosses = bossesOf(spec, here)
  const caseFace = caseFaceOf(spec, here)
  const caseBosses = caseFace === here ? bosses : bossesOf(spec, caseFace)
  const outline = outlineOf(spec, caseFace, [...caseBosses, ...bosses])
  const openings = openingsOf(caseFace, outline, caseBosses)
  const crank = drawnPieces(spec, here, facts, content, outline)
  const covered = [...bosses, ...coveredBy(crank, here)]
  const body = boxAround([...outline, ...covered].map(({ x, y }) => unstretched(x, y)))
  const ends = endNames(
    words,
    spec,
    here.face,
    content.halves ? (here.bearings[0]?.split ?? null) : null,
    sizes,
    lying,
    sheet.widthPx,
  )
  let names = namesOf(words, spec, { here, facts, content, outline, view, crank }, sizes)
  const atEnds = endMargins(ends, here.face, lying)
  const titleWith = (stretch: number): readonly Line[] =>
    titleLines(words, { engineCase: spec.case, face: here.face, view }, stretch, sheet, sizes)
  const titleFoot =
    titleInset.top + Math.max(...[1, mostStretch].map((each) => stackSize(titleWith(each)).height))
  const underTitle = titleFoot + 8
  const calloutCapital = hasCallout(facts)
    ? Math.min(
        sizes.next,
        Math.max(sheet.capitalPx, sheet.heightPx * usualOfHeight),
        (sheet.heightPx * mostOfHeight) / calloutHeight,
      )
    : 0
  const underCallout = calloutCapital === 0 ? underTitle : underTitle + calloutCapital * calloutHeight + 8
  /** From the sheet's left edge; null while the callout stands over the case. */
  let column: number | null = null
  const stretched = acrossAnEnd(here.face) ? null : lying ? 'height' : 'width'
  const noseFirst = (lying ? along.x : along.y) > 0
  const first = noseFirst ? atEnds.nose : atEnds.drive
  const last = noseFirst ? atEnds.drive : atEnds.nose

  let depths = none
  let discDepths = none
  let overhang = 0
  /** What stands before the case on the side of its lanes, and after it, without title and callout. */
  const inLanesPx = () => ({
    before: edgeOfSheet + depths.before + discDepths.before,
    after: edgeOfSheet + depths.after + discDepths.after,
  })
  const alongCase = (): number => {
    const { before, after } = inLanesPx()
    return before + after + (lying ? (column === null ? underCallout : underTitle) : (column ?? 0))
  }
  const planBeside = (column: number | null): SheetPlan => {
    const [top, left] = column === null ? [underCallout, 0] : [underTitle, column]
    const { before, after } = inLanesPx()
    const margins = lying
      ? { left: left + first, right: last, top: top + before, bottom: after }
      : { left: left + before, right: after, top: top + first, bottom: last }
    return planOf(body, sheet, margins, overhang, stretched)
  }
  let plan = planBeside(null)
  for (const capitals of calloutCapital > 0 ? calloutColumns : []) {
    const wished = edgeOfSheet + capitals * calloutCapital
    if (column !== null || planBeside(wished).px * worthACallout >= plan.px) continue
    if (!lying && wished > sheet.widthPx * mostOfWidth) continue
    ;[column, plan] = [wished, planBeside(wished)]
  }
  let wantsDiscLanes = false
  let lanes: LanesOfNames
  let laneDiscs: readonly LaneDisc[] | null
  let drawn: Pick<
    Drawing,
    'place' | 'px' | 'frame' | 'stretch' | 'edge' | 'body' | 'endShapes' | 'discs' | 'laneDepths'
  >
  // Each round gives what stands round the case the room that it asked for in the last one: it never asks for less.
  for (let round = 0; ; round += 1) {
    const { px, frame, stretch } = plan
    const place = stretchedBy(unstretched, stretch)
    const nearer =
      content.bearings === 'graded' && here.bearings.length > 0
        ? minimalBoxes(here.bearings, place, stretch, px)
        : []
    const on = { place, px, sizes, bearings: nearer }
    const laid = { here, outline, bosses: covered, ends, place, along, across, overhang, px }
    const run = runOfDiscs(frame, lying, underCallout, px)
    const places = here.fasteners.map(({ at }) => place(inMillimetres(at[0]), inMillimetres(at[1])))
    const bare = wantsDiscLanes
      ? caseOnSheet(laid, bareDiscs(spec, here.fasteners, facts, 'rings', places, px))
      : null
    const inLanes = bare === null ? null : discLanes(bare, run)
    const isInLanes = bare !== null && inLanes !== null
    const found = isInLanes ? null : discsOf(spec, here.fasteners, facts, content.fasteners, on)
    const onSheet = isInLanes ? bare : caseOnSheet(laid, found?.discs ?? [])
    const laneDepths = inLanes?.lanes.depths ?? none
    lanes = lanesOn(names, place, onSheet, laneDepths, frame)
    drawn = {
      place,
      px,
      frame,
      stretch,
      edge: onSheet.edge,
      body: onSheet.body,
      endShapes: onSheet.endShapes,
      discs: onSheet.discs,
      laneDepths,
    }
    laneDiscs =
      inLanes === null
        ? null
        : placedInLanes(inLanes.lanes, lying, longEdges(onSheet, none), inLanes.spans, px)
    if (round === mostRounds) break
    const askedByNames = deeperLane(depths, { before: lanes.before.depth, after: lanes.after.depth })
    let askedByDiscs = deeperLane(discDepths, laneDepths)
    let changed = askedByNames !== depths || askedByDiscs !== discDepths
    if (found?.crowded && !wantsDiscLanes) {
      const wished = discLanes(onSheet, run)
      // They want the whole length of the sheet.
      if (wished !== null) {
        askedByDiscs = wished.lanes.depths
        ;[wantsDiscLanes, overhang, changed, column] = [true, 0, true, null]
      }
    } else if (found !== null && !wantsDiscLanes) {
      const edge = outline.map(({ x, y }) => place(x, y))
      const bossy = boxAround([...edge, ...covered.map(({ x, y }) => place(x, y))])
      const over = Math.max(overhangOf(found.discs, edge, px), beyondBox(found.discs, bossy) / px)
      if (over > overhang + 0.25) [overhang, changed] = [over, true]
    }
    if (!changed) break
    ;[depths, discDepths] = [askedByNames, askedByDiscs]
    // On a sheet too small for all that stands along the case, names give way to what is next: first those of bores, whose lines are
    // hidden ones.
    if (names.length > 0 && alongCase() > (lying ? sheet.heightPx : sheet.widthPx) * mostOfMargins) {
      const fewer = names.filter(({ about }) => about?.startsWith('bore/') !== true)
      names = fewer.length < names.length ? fewer : []
      depths = none
    }
    plan = planBeside(column)
  }
  return {
    ...{ words, viewText: words.drawing.view, spec, here, facts, content, view, sheet },
    ...{ along, across, outline, openings, bosses, crank, sizes, ends, names },
    ...drawn,
    ...{ lanes, laneDiscs },
    calloutPlace:
      calloutCapital === 0
        ? null
        : {
            top: underTitle,
            capital: calloutCapital,
            widthPx: column === null ? sheet.widthPx : column - edgeOfSheet,
          },
    numbered: numberedOn(sheet, facts, drawn.discs),
    title: titleWith(drawn.stretch),
  }
}

/**
 * Those that keep their numbers on a sheet that is read from afar, and of a procedure that goes cap by cap those of that cap; null
 * where all do.
 */
export function numberedOn(
  sheet: Sheet,
  facts: DrawingFacts,
  discs: readonly Disc[],
): ReadonlySet<string> | null {
  const near = sheet.onlyNext === true ? besideNext({ facts, discs }) : null
  if (!facts.cap) return near
  return new Set(facts.cap.fasteners.filter((id) => near === null || near.has(id)))
}

/** Whether something can be next on this drawing: the place of the callout is kept for it all the while. */
export function hasCallout({ subject, nextHalf, callout }: DrawingFacts): boolean {
  return subject === 'tightening' || nextHalf !== null || callout !== null
}

function stretchedBy(place: Projection, stretch: number): Projection {
  return stretch === 1 ? place : (x, y) => place(x, y * stretch)
}

/** A lane of numbers has the whole of the sheet; down the sheet it begins under the title and the callout. */
function runOfDiscs(frame: Box, lying: boolean, top: number, px: number): Span {
  const [from, length] = lying ? [frame.left, frame.width] : [frame.top, frame.height]
  return { from: from + (lying ? 4 : top) * px, to: from + length - 4 * px }
}
