import { thrustBoxes, type DrawnBearing } from './bearings.ts'
import { boxAround, grown, type Point } from './box.ts'
import { onSheet, type Drawing } from './drawing.ts'
import { stateOf } from './fasteners.ts'
import type { BearingFact, NoteFact } from './facts.ts'
import { framedPlace, framedShapes, type FramedPlace } from './framed.ts'
import { boxTarget, type Line, type Target } from './lettering.ts'
import type { LineShape, Shape } from './scene.ts'
import { textWidth } from './text-width.ts'

/** A line of a note may be so wide, in capitals: whichever stands nearer. A note has at most so many lines. */
const widths = [9, 13, 19]
const mostLines = 3
/** A leader longer than this share of the sheet's smaller side leads the eye nowhere. */
const longestLeader = 0.4
/** In so many places a leader may end at the edge of the face. */
const placesOnEdge = 16

/** All notes of the face: at fasteners, washers and the face itself as the build says, at bearings as their facts say. */
export function notesOf({ facts, here }: Drawing): readonly NoteFact[] {
  const atBearings = here.bearings.flatMap(({ id }): readonly NoteFact[] => {
    const texts = bearingTexts(facts.bearings[id])
    return texts.length === 0 ? [] : [{ about: `half/${id}/upper`, kind: 'open', texts }]
  })
  const open = facts.notes.filter(({ kind }) => kind === 'open')
  return [...open, ...atBearings, ...facts.notes.filter(({ kind }) => kind === 'measured')]
}

/** What there is to look at a bearing; nothing where all is well. */
export function bearingTexts(fact: BearingFact | undefined): readonly string[] {
  if (fact === undefined) return []
  const outside = fact.withinLimits ? [] : [fact.judged ?? 'outside the limits']
  return [...(fact.flag === undefined ? [] : [fact.flag]), ...outside]
}

/**
 * The notes in their frames, each at the end of a leader line to its thing, as many as there is room for: none covers
 * anything, no leader crosses another thing. One without room is left out: its thing is marked by itself, and the rows
 * say it in full. `lines` are what of the drawing takes no room by itself and may not be covered either.
 */
export function noteShapes(
  drawing: Drawing,
  bearings: readonly DrawnBearing[],
  lines: readonly Shape[],
): readonly Shape[] {
  const { room, sizes } = drawing
  for (const shape of lines) {
    if (shape.kind !== 'line') continue
    if (shape.closed) room.takeBox(boxAround(pointsOf(shape)))
    else room.takeLine(pointsOf(shape), false, 2 * sizes.px)
  }
  const longest = longestLeader * Math.min(room.frame.width, room.frame.height)
  return notesOf(drawing).flatMap((note) => {
    const targets = targetsOf(drawing, bearings, note.about)
    const [nearest] = shapesOfText(note, sizes.name)
      .flatMap((lines) => targets.map((target) => framedPlace(drawing, lines, target)))
      .filter((place) => place !== null)
      .filter((place) => place.passes && leaderLength(place) <= longest)
      .toSorted((one, other) => linesCut(one) - linesCut(other) || leaderLength(one) - leaderLength(other))
    if (nearest === undefined) return []
    const id = `note/${note.about}`
    const role = note.kind === 'open' ? 'open-note' : 'measured-note'
    const look = { id, textId: `${id}/text`, about: note.about, layer: 'parts', role } as const
    return framedShapes(drawing, nearest, look)
  })
}

function linesCut({ lines }: FramedPlace): number {
  return lines.filter(({ text }) => text.endsWith('…')).length
}

function leaderLength({ leader: [from, to] }: FramedPlace): number {
  return Math.hypot(to.x - from.x, to.y - from.y)
}

function pointsOf({ points }: LineShape): readonly Point[] {
  return points.flatMap((x, index) => (index % 2 === 0 ? [{ x, y: points[index + 1] ?? 0 }] : []))
}

/** What a note says, in narrow and in wide lines. */
function shapesOfText({ kind, texts }: NoteFact, capital: number): readonly (readonly Line[])[] {
  const [first = '', ...others] = texts
  const text = `${kind === 'open' ? '! ' : ''}${first}`
  const more = others.length === 0 ? [] : [`+${others.length} more`]
  const weight = kind === 'open' ? 'bold' : 'regular'
  return widths.map((widest) =>
    [...wrapped(text, weight, widest, mostLines - more.length), ...more].map((line): Line => ({
      text: line,
      capital,
      weight,
      role: 'note-text',
    })),
  )
}

/** In lines between words; what is left over, and a word longer than a line, is cut off with an ellipsis. */
function wrapped(text: string, weight: Line['weight'], widest: number, most: number): readonly string[] {
  const fits = (line: string): boolean => textWidth(line, 1, weight) <= widest
  const cut = (line: string): string => {
    if (fits(line)) return line
    const characters = [...line]
    while (characters.length > 1 && !fits(`${characters.join('')}…`)) characters.pop()
    return `${characters.join('').trimEnd()}…`
  }
  const lines: string[] = []
  for (const word of text.split(/\s+/).filter((each) => each !== '')) {
    const last = lines.at(-1)
    if (last !== undefined && (fits(`${last} ${word}`) || lines.length === most))
      lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
  }
  return lines.map(cut)
}

/** Where a leader to the thing may end; nowhere for what is not on the face. */
function targetsOf(drawing: Drawing, bearings: readonly DrawnBearing[], about: string): readonly Target[] {
  const { discs, sizes } = drawing
  const gap = 2 * sizes.px
  const [kind, id] = about.split('/')
  const drawn = bearings.find(({ bearing }) => bearing.id === id)
  switch (kind) {
    case 'fastener':
      return discs
        .filter((disc) => disc.id === id)
        .map((disc) => {
          const { state } = stateOf(drawing, disc.id)
          const radius = state === 'next' ? disc.nextRadius : disc.radius
          return { x: disc.x, y: disc.y, radius, clear: disc.reach - radius + gap }
        })
    case 'half':
      return drawn === undefined ? [] : [boxTarget(grown(drawn.whole, 2.5 * sizes.px), gap)]
    case 'thrust':
      return drawn === undefined ? [] : thrustBoxes(drawing, drawn).map((box) => boxTarget(box, 3 * gap))
    case 'face':
      return edgePoints(drawing).map((point) => ({ ...point, radius: 0, clear: gap }))
    default:
      return []
  }
}

/** Points along the edge of the face, evenly apart. */
function edgePoints(drawing: Drawing): readonly Point[] {
  const corners = onSheet(drawing, drawing.outline)
  const sides = corners.map((from, index) => {
    const to = corners[(index + 1) % corners.length] ?? from
    return { from, to, length: Math.hypot(to.x - from.x, to.y - from.y) }
  })
  const step = sides.reduce((sum, { length }) => sum + length, 0) / placesOnEdge
  let walked = 0
  return sides.flatMap(({ from, to, length }) => {
    const before = walked
    walked += length
    const first = Math.ceil(before / step - 0.5)
    const count = Math.max(0, Math.ceil(walked / step - 0.5) - first)
    return Array.from({ length: count }, (_, index) => {
      const share = ((first + index + 0.5) * step - before) / length
      return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
    })
  })
}
