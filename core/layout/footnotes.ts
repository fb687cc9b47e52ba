import type { DrawnBearing } from './parts/bearings.ts'
import { cornersOf, type Point } from '../plane/index.ts'
import type { Drawing } from './drawing.ts'
import type { BearingFact, DrawingFacts, NoteFact } from './facts.ts'
import { onFace } from './case/on-face.ts'
import type { Shape } from './scene/scene.ts'
import { leastCapital } from './sizes.ts'
import type { EngineSpec } from '../engine/index.ts'
import type { Words } from '../words/index.ts'
import { contents, type DrawingSubject } from './content.ts'

/** A note with the number of its sign on the drawing. */
export interface Footnote extends NoteFact {
  readonly number: number
}

/** Whether a drawing about that has notes at all: while fasteners are tightened it has none. */
export function hasFootnotes(subject: DrawingSubject): boolean {
  return contents[subject].notes
}

/**
 * All notes of a face, numbered: at fasteners, washers and the face itself as the build says, at bearings as their facts
 * say. None where the drawing is not about them.
 */
export function footnotesOf(words: Words, spec: EngineSpec, facts: DrawingFacts): readonly Footnote[] {
  if (!hasFootnotes(facts.subject)) return []
  const atBearings = onFace(spec, facts.face).bearings.flatMap(({ id }): readonly NoteFact[] => {
    const texts = bearingTexts(words, facts.bearings[id])
    return texts.length === 0 ? [] : [{ about: `half/${id}/upper`, kind: 'open', texts }]
  })
  const open = facts.notes.filter(({ kind }) => kind === 'open')
  const measured = facts.notes.filter(({ kind }) => kind === 'measured')
  return [...open, ...atBearings, ...measured].map((note, index) => ({ ...note, number: index + 1 }))
}

/** What there is to look at a bearing; nothing where all is well. */
export function bearingTexts(words: Words, fact: BearingFact | undefined): readonly string[] {
  if (fact === undefined) return []
  const outside = fact.withinLimits ? [] : [fact.judged ?? words.drawing.outsideLimits]
  return [...(fact.flag === undefined ? [] : [fact.flag]), ...outside]
}

/** Of a sign, in px. */
const radius = 7.5

/** A small numbered sign at each thing that is noted; the words have the same number in the panel. */
export function footnoteShapes(
  drawing: Drawing,
  bearings: readonly DrawnBearing[],
  titleEnd: Point,
): readonly Shape[] {
  const { px } = drawing
  let atFace = 0
  return footnotesOf(drawing.words, drawing.spec, drawing.facts).flatMap(
    ({ about, kind, number }): readonly Shape[] => {
      const place = about.startsWith('face/')
        ? { x: titleEnd.x + (12 + 18 * atFace++) * px, y: titleEnd.y }
        : placeOf(drawing, bearings, about)
      if (place === null) return []
      const id = `note/${about}`
      const text = {
        x: place.x,
        y: place.y,
        text: String(number),
        capital: leastCapital * px,
        anchor: 'middle',
        weight: 'bold',
      } as const
      return [
        {
          ...{
            kind: 'circle',
            id,
            about,
            layer: 'parts',
            role: kind === 'open' ? 'open-note' : 'measured-note',
          },
          ...{ x: place.x, y: place.y, radius: radius * px },
        },
        { kind: 'text', id: `${id}/text`, about, layer: 'parts', role: 'note-text', ...text },
      ]
    },
  )
}

/** At a corner of the thing; null for what is not on the face, or has fasteners all round it. */
function placeOf({ discs, px }: Drawing, bearings: readonly DrawnBearing[], about: string): Point | null {
  const [kind, id] = about.split('/')
  if (kind === 'fastener') {
    const disc = discs.find((each) => each.id === id)
    if (disc === undefined) return null
    const off = Math.max(disc.radius * 0.95, radius * px * 0.9)
    return { x: disc.x + off, y: disc.y - off }
  }
  const drawn = bearings.find(({ bearing }) => bearing.id === id)
  if ((kind !== 'half' && kind !== 'thrust') || drawn === undefined) return null
  const corners = cornersOf(drawn.whole)
  const isFree = ({ x, y }: Point): boolean =>
    discs.every((disc) => Math.hypot(disc.x - x, disc.y - y) > disc.radius + radius * px)
  // The upper right one first.
  const [first] = [1, 2, 0, 3].map((index) => corners[index]!).filter(isFree)
  return first ?? null
}
