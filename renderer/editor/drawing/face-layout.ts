import {
  bareFacts,
  drawingAfter,
  shapesOn,
  type Drawing,
  type DrawingFacts,
  type FastenerFact,
  type NoteFact,
  type Scene,
  type Sheet,
} from '../../../core/layout/index.ts'
import type { Words } from '../../../core/words/index.ts'
import type { ReadDocument } from '../draft/draft-at-work.ts'
import { notesOn } from './notes-on-face.ts'

/** What the drawing of a face depends on. */
export interface FaceAsked {
  readonly words: Words
  readonly face: string
  /** The order whose places stand in the discs; null for the numbers of the drawing. */
  readonly sequence: readonly string[] | null
  /** The group whose fasteners are filled; null for none. */
  readonly group: string | null
  readonly widthPx: number
  readonly heightPx: number
  readonly capitalPx: number
}

export interface LaidFace {
  readonly notes: readonly NoteFact[]
  readonly drawing: Drawing
  readonly scene: Scene
}

/** Lays faces out, and keeps the last: asked for the same again, as when it was laid out ahead, it gives that very one. */
export function faceLayout(): (of: ReadDocument, asked: FaceAsked) => LaidFace {
  let last: { readonly on: readonly unknown[]; readonly laid: LaidFace } | null = null
  return (of, asked) => {
    const on = [of.document, of.spec, of.findings, ...(Object.values(asked) as unknown[])]
    if (last === null || on.some((each, place) => each !== last?.on[place]))
      last = { on, laid: laidOut(of, asked, last?.laid.drawing ?? null) }
    return last.laid
  }
}

function laidOut(of: ReadDocument, asked: FaceAsked, last: Drawing | null): LaidFace {
  const { words, face, widthPx, heightPx, capitalPx } = asked
  const sheet: Sheet = { widthPx, heightPx, capitalPx }
  const open = of.findings.filter(({ accepted }) => !accepted)
  const notes = notesOn(words, of.document, face, open)
  const view = { from: viewedFrom(of, face), turn: 0 } as const
  const drawing = drawingAfter(last, words, of.spec, factsOf(of, asked, notes), view, sheet)
  return { notes, drawing, scene: { frame: drawing.frame, shapes: shapesOn(drawing), rows: [] } }
}

function viewedFrom({ spec }: ReadDocument, face: string) {
  return spec.case.faces.find(({ id }) => id === face)!.workedFrom
}

function factsOf(
  { spec }: ReadDocument,
  { face, sequence, group }: FaceAsked,
  notes: readonly NoteFact[],
): DrawingFacts {
  const factOf = (id: string, number: string, of: string): FastenerFact => {
    const place = sequence?.indexOf(id) ?? -1
    const isFilled = sequence === null ? of === group : place >= 0
    return {
      number: sequence === null ? number : place >= 0 ? String(place + 1) : '·',
      state: isFilled ? 'done' : 'waiting',
      share: isFilled ? 1 : 0,
    }
  }
  const fasteners = spec.fasteners.map(({ id, number, group: of }) => [id, factOf(id, number, of)] as const)
  const beads = spec.beads.flatMap(({ id, face: on }) => (on === face ? [[id, 'laid'] as const] : []))
  return {
    ...bareFacts(face),
    ...{ notes, fasteners: Object.fromEntries(fasteners), beads: Object.fromEntries(beads) },
  }
}
