import { sidesOf, type Point } from '../../plane/index.ts'
import type { SpecDocument } from '../../engine/index.ts'
import { outlineOf } from './face.ts'
import { inNanometres } from './position.ts'
import { aboutOf, subjects, type ThingKind } from './thing.ts'
import { thingsOn } from './things.ts'

/** A line that a place was drawn onto: across the engine at an x, or along it at a y. */
export interface SnapLine {
  readonly axis: 'x' | 'y'
  readonly at: number
  readonly of: 'axis' | 'saddle' | 'edge' | 'thing' | 'mirror'
  /** The saddle's or the thing's name; null for the axis and the edge. */
  readonly name: string | null
}

export interface SnappedPoint {
  readonly at: Point
  readonly lines: readonly SnapLine[]
}

/** Where no line is near, places fall on whole millimetres. */
const grid = 1_000_000

/**
 * A place drawn onto the nearest lines within reach: the axis, middles and edges of the saddles, the other things of the face and
 * their mirror images, the edges of the face that lie along or across. All in nanometres. `except` are those that are moved; of
 * kinds beside the fasteners and holes only those that are named are among the things.
 */
export function snapped(
  document: SpecDocument,
  face: string,
  at: Point,
  reach: number,
  except: ReadonlySet<string> = new Set(),
  also: readonly ThingKind[] = [],
): SnappedPoint {
  const lines = linesOf(document, face, except, also)
  const nearestLine = (axis: 'x' | 'y'): SnapLine | null => {
    const off = (line: SnapLine) => Math.abs(line.at - at[axis])
    const near = lines.filter((line) => line.axis === axis && off(line) <= reach)
    return near.reduce<SnapLine | null>((best, each) => (!best || off(each) < off(best) ? each : best), null)
  }
  const [x, y] = [nearestLine('x'), nearestLine('y')]
  const onGrid = (value: number) => Math.round(value / grid) * grid + 0
  return {
    at: { x: x?.at ?? onGrid(at.x), y: y?.at ?? onGrid(at.y) },
    lines: [x, y].filter((line) => line !== null),
  }
}

function linesOf(
  document: SpecDocument,
  face: string,
  except: ReadonlySet<string>,
  also: readonly ThingKind[],
): readonly SnapLine[] {
  const kinds = [...new Set([...subjects.parts, ...also])].filter((kind) => kind !== 'saddle')
  const things = thingsOn(document, face, kinds).filter((thing) => !except.has(aboutOf(thing)))
  return [
    { axis: 'y', at: 0, of: 'axis', name: null },
    ...document.case.saddles.flatMap((saddle): readonly SnapLine[] => {
      if (except.has(`saddle/${saddle.id}`)) return []
      const [middle, width] = [inNanometres(saddle.at), inNanometres(saddle.width)]
      return [
        { axis: 'x', at: middle, of: 'saddle', name: saddle.id },
        { axis: 'x', at: middle - Math.round(width / 2), of: 'saddle', name: saddle.id },
        { axis: 'x', at: middle + Math.round(width / 2), of: 'saddle', name: saddle.id },
      ]
    }),
    ...things.flatMap((thing): readonly SnapLine[] => [
      { axis: 'x', at: thing.at.x, of: 'thing', name: aboutOf(thing) },
      { axis: 'y', at: thing.at.y, of: 'thing', name: aboutOf(thing) },
      { axis: 'y', at: 0 - thing.at.y, of: 'mirror', name: aboutOf(thing) },
    ]),
    ...edgesOf(outlineOf(document, face) ?? []),
  ]
}

function edgesOf(outline: readonly Point[]): readonly SnapLine[] {
  return sidesOf(outline, true).flatMap(([from, to]): readonly SnapLine[] => {
    if (from.x === to.x) return [{ axis: 'x', at: from.x, of: 'edge', name: null }]
    return from.y === to.y ? [{ axis: 'y', at: from.y, of: 'edge', name: null }] : []
  })
}
