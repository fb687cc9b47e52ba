import type { EngineSpec } from '../../engine/index.ts'
import { acrossAnEnd, boxAbout, type Scene, type SceneRow, type Shape } from '../../layout/index.ts'
import type { Words } from '../../words/index.ts'
import { candidatesOf, type MirrorQuestion } from './mirror-drill.ts'

/**
 * The drawing of a face with all names and numbers taken off that would tell which place is which, but for the one that is
 * shown; of a half of the case only its own half of each saddle is left. Its list says where on the sheet a place lies, counted
 * along the longer way of the case: who answers by keys has to turn the face in the mind too.
 */
export function asLying(
  words: Words,
  spec: EngineSpec,
  question: MirrorQuestion,
  scene: Scene,
  shown: string | null,
): Scene {
  const candidates = new Set(candidatesOf(spec, question).map(({ about }) => about))
  const face = spec.case.faces.find(({ id }) => id === question.face)!
  const halves = question.kind === 'shell' ? wholeSaddles(scene, candidates) : new Map<string, Shape>()
  const shapes = scene.shapes.flatMap((shape): readonly Shape[] => {
    if (isName(shape) || (shape.id.startsWith('side/') && !acrossAnEnd(face))) return []
    const { about } = shape
    if (question.kind === 'shell') {
      if (about?.startsWith('half/') !== true) return [shape]
      const whole = halves.get(about)
      if (shape.id.endsWith('/unknown')) return whole === undefined ? [] : [whole]
      return candidates.has(about) ? [shape] : []
    }
    const isNumber = shape.kind === 'text' && about !== undefined && candidates.has(about)
    return isNumber && about !== shown ? [] : [shape]
  })
  return { ...scene, shapes, rows: rowsOnSheet(words, scene, [...candidates]) }
}

const isName = ({ id }: Shape) => /^(bearing|saddle)\/[^/]+\/name/.test(id) || id.startsWith('half-name/')

/** Of each saddle the one half that lies there, over the whole width that the drawing has for both. */
function wholeSaddles(scene: Scene, candidates: ReadonlySet<string>): ReadonlyMap<string, Shape> {
  return new Map(
    [...candidates].flatMap((about) => {
      const [, position] = about.split('/')
      const points = scene.shapes.flatMap((shape) =>
        shape.kind === 'line' &&
        shape.about?.startsWith(`half/${position}/`) === true &&
        shape.id.endsWith('/unknown')
          ? shape.points
          : [],
      )
      const own = scene.shapes.find(({ id }) => id === `${about}/unknown`)
      if (own?.kind !== 'line' || points.length === 0) return []
      const [xs, ys] = [points.filter((_, at) => at % 2 === 0), points.filter((_, at) => at % 2 === 1)]
      const [left, right] = [Math.min(...xs), Math.max(...xs)]
      const [top, foot] = [Math.min(...ys), Math.max(...ys)]
      return [[about, { ...own, points: [left, top, right, top, right, foot, left, foot] }] as const]
    }),
  )
}

function rowsOnSheet(words: Words, scene: Scene, candidates: readonly string[]): readonly SceneRow[] {
  const others = scene.rows.filter(
    ({ about }) => about.startsWith('face/') || about === 'nose' || about === 'drive',
  )
  const places = candidates.flatMap((about) => {
    const middle = middleOnSheet(scene, about)
    return middle === null ? [] : [{ about, ...middle }]
  })
  const extent = (values: readonly number[]) => {
    const least = Math.min(...values)
    return { least, length: Math.max(...values) - least }
  }
  const [wide, high] = [extent(places.map(({ x }) => x)), extent(places.map(({ y }) => y))]
  const lying = wide.length >= high.length
  const across = lying ? high : wide
  const shareOf = (place: { readonly x: number; readonly y: number }) =>
    across.length === 0 ? 0.5 : ((lying ? place.y : place.x) - across.least) / across.length
  const ordered = places.toSorted((a, b) => (lying ? a.x - b.x || a.y - b.y : a.y - b.y || a.x - b.x))
  const rows = ordered.map((place, at): SceneRow => ({
    about: place.about,
    text: words.practice.mirror.place({
      ...{ number: at + 1, of: places.length, from: lying ? 'left' : 'top' },
      aside:
        across.length < 1
          ? 'none'
          : shareOf(place) < 1 / 3
            ? 'low'
            : shareOf(place) > 2 / 3
              ? 'high'
              : 'middle',
    }),
    state: 'plain',
  }))
  return [...others, ...rows]
}

/** Where a thing itself is on the sheet; its number may stand beside the case. */
export function middleOnSheet(
  scene: Scene,
  about: string,
): { readonly x: number; readonly y: number } | null {
  const disc = scene.shapes.find(({ id }) => id === `${about}/disc`)
  if (disc?.kind === 'circle') return { x: disc.x, y: disc.y }
  const box = boxAbout(scene, about)
  return box === null ? null : { x: box.left + box.width / 2, y: box.top + box.height / 2 }
}
