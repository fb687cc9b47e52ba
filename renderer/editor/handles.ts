import { aboutOf, isBearing, type PlacedThing } from '../../core/drafts/index.ts'
import type { EngineSpec } from '../../core/engine/index.ts'
import { aboutAt, type Drawing, type Scene, type SceneRow, type Shape } from '../../core/layout/index.ts'
import type { Point } from '../../core/plane/index.ts'
import type { Words } from '../../core/words/index.ts'

/** So many px across a handle is. */
const radiusPx = 7

/** Handles by which bearings, corners, points of beads and zones are taken hold of. */
export function handlesOf({ place, px }: Drawing, things: readonly PlacedThing[]): readonly Shape[] {
  return things.map((thing): Shape => {
    const about = aboutOf(thing)
    const { x, y } = place(thing.at.x / 1e6, thing.at.y / 1e6)
    return {
      ...{ id: `handle/${about}`, about, kind: 'circle', layer: 'overlay', role: 'handle' },
      ...{ x, y, radius: radiusPx * px },
    }
  })
}

/** The handle under a tap; null for none. */
export function handleAt(scene: Scene, handles: readonly Shape[], at: Point, reach: number): string | null {
  return aboutAt({ ...scene, shapes: handles }, at, reach)
}

/** The same in words, for keys and screen readers. */
export function handleRows(
  words: Words,
  spec: EngineSpec,
  things: readonly PlacedThing[],
): readonly SceneRow[] {
  return things.map((thing) => ({
    about: aboutOf(thing),
    text: handleText(words, spec, thing),
    state: 'plain',
  }))
}

export function handleText(words: Words, spec: EngineSpec, { kind, id }: PlacedThing): string {
  const { handles } = words.editor.drawn
  if (isBearing(kind)) return handles.bearing({ kind, id })
  const [of = '', number = '1'] = id.split('~')
  if (kind === 'corner') return handles.corner({ number: Number(number) })
  const bead = spec.beads.find((each) => each.id === of)
  if (kind === 'bead-point') return handles.beadPoint({ bead: bead?.name ?? of, number: Number(number) })
  return words.drawing.list.keepOut({ name: bead?.keepOut[Number(number) - 1]?.name ?? of })
}
