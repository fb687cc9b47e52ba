import type { Bead, EngineSpec } from '../../engine/index.ts'
import type { Phrase } from '../../problem/index.ts'
import { distanceToSegment, gapToBox, insidePolygon, sidesOf } from '../../plane/index.ts'
import { fault, type Finding } from '../finding.ts'
import { nameOfFace } from '../tightening/orders.ts'
import { dowelCalled, fastenerNumbered } from './positions.ts'
import { boxAt, pointAt, pointsOf, type Zone } from './places.ts'

/** Beads against everything they must stay off, with half their width to either side of the path. */
export function auditBeads(spec: EngineSpec): readonly Finding[] {
  return spec.beads.flatMap((bead, index) => auditBead(spec, bead, `beads[${index}].path`))
}

function auditBead(spec: EngineSpec, bead: Bead, path: string): readonly Finding[] {
  const points = pointsOf(bead.path)
  const sides = sidesOf(points, bead.closed)
  const meets = (zone: Zone): boolean =>
    sides.some(([from, to]) => gapToBox(boxAt(zone), from, to) < bead.width / 2)
  const outline = spec.case.faces.find(({ id }) => id === bead.face)?.outline
  const leaves = outline !== undefined && points.some((point) => !insidePolygon(pointsOf(outline), point))
  return [
    ...bead.keepOut
      .filter(meets)
      .map(({ name }) => fault('bead-in-keep-out', { bead: bead.name, zone: name }, path)),
    ...spec.case.oilPassages
      .filter((passage) => passage.face === bead.face && meets(passage))
      .map(({ name }) => fault('bead-over-oil-passage', { bead: bead.name, passage: name }, path)),
    ...holesUnder(spec, bead, sides).map((what) => fault('bead-over-hole', { bead: bead.name, what }, path)),
    ...(leaves
      ? [fault('bead-outside-outline', { bead: bead.name, face: nameOfFace(spec, bead.face) }, path)]
      : []),
  ]
}

/** Fasteners and dowels whose own diameter the bead covers in part. */
function holesUnder(spec: EngineSpec, bead: Bead, sides: ReturnType<typeof sidesOf>): readonly Phrase[] {
  const diameters = new Map(spec.fastenerGroups.map(({ id, thread }) => [id, thread.diameter]))
  const holes = [
    ...spec.fasteners.map(({ face, at, number, group }) => ({
      face,
      at,
      diameter: diameters.get(group) ?? 0,
      what: fastenerNumbered(number),
    })),
    ...spec.case.dowels.map((dowel) => ({
      ...{ face: dowel.face, at: dowel.at, diameter: dowel.diameter },
      what: dowelCalled(spec, dowel),
    })),
  ]
  return holes
    .filter(
      ({ face, at, diameter }) =>
        face === bead.face &&
        sides.some((side) => distanceToSegment(pointAt(at), ...side) < (diameter + bead.width) / 2),
    )
    .map(({ what }) => what)
}
