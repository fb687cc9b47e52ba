import { aboutOf, isBearing, type PlacedThing } from '../../../core/drafts/index.ts'
import { dowelNumber, type EngineSpec } from '../../../core/engine/index.ts'
import {
  aboutAt,
  type Drawing,
  type NoteFact,
  type Scene,
  type SceneRow,
  type Shape,
} from '../../../core/layout/index.ts'
import type { Point } from '../../../core/plane/index.ts'
import type { Words } from '../../../core/words/index.ts'

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

/** What is shown of a thing in the list for keys and screen readers. */
interface ListedHandle {
  readonly chosen: ReadonlySet<string>
  /** The order that is tapped in; null where none is. */
  readonly sequence: readonly string[] | null
  readonly notes: readonly NoteFact[]
}

/** What can be chosen, in words, for keys and screen readers: each with whether it is, its place in the order, what is said of it. */
export function thingRows(
  words: Words,
  spec: EngineSpec,
  things: readonly PlacedThing[],
  { chosen, sequence, notes }: ListedHandle,
): readonly SceneRow[] {
  const { listed } = words.editor.drawn
  return things.map((thing) => {
    const about = aboutOf(thing)
    const isChosen = chosen.has(about)
    const place = sequence?.indexOf(thing.id) ?? -1
    const details = [
      ...(isChosen ? [listed.chosen] : []),
      ...(place >= 0 ? [listed.inOrder({ place: place + 1 })] : []),
      ...notes.flatMap((note) => (note.about === about ? note.texts : [])),
    ]
    const text = [thingText(words, spec, thing), ...details].join('; ')
    return { about, text, state: isChosen ? 'chosen' : 'plain' }
  })
}

function thingText(words: Words, spec: EngineSpec, thing: PlacedThing): string {
  const { kind, id } = thing
  const { list } = words.drawing
  switch (kind) {
    case 'fastener': {
      const { number = id, where = '', group = '' } = spec.fasteners.find((each) => each.id === id) ?? {}
      const { name = group } = spec.fastenerGroups.find((each) => each.id === group) ?? {}
      return `${list.fastener({ number, where })}, ${name}`
    }
    case 'dowel':
      return dowelText(words, spec, id)
    case 'oil-passage':
      return list.passage({ name: spec.case.oilPassages.find((each) => each.id === id)?.name ?? id })
    case 'face-part': {
      const part = spec.case.faceParts.find((each) => each.id === id)
      return part === undefined ? id : list.facePart(part)
    }
    default:
      return handleText(words, spec, thing)
  }
}

export function dowelText({ drawing }: Words, { case: { dowels } }: EngineSpec, id: string): string {
  const dowel = dowels.find((each) => each.id === id)
  return drawing.list.dowel({ number: dowel ? dowelNumber(dowels, dowel) : id })
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
