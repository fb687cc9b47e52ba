import type { Amount } from '../../words/index.ts'
import type { Phrase } from '../../problem/index.ts'
import { difference, half, lengthAmount, sum, type Length } from '../../quantity/index.ts'
import { dowelNumber, type Dowel, type EngineCase, type EngineSpec, type Face } from '../../engine/index.ts'
import { crossesItself, insidePolygon } from '../../plane/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'
import { pointAt, pointsOf, type Place } from './places.ts'

/** Whether the parts have room: bearings along the crank, bores, fasteners and dowels on their faces. */
export function auditPositions(spec: EngineSpec): readonly Finding[] {
  return [
    ...auditBearings(spec.case),
    ...auditBores(spec.case),
    ...auditRods(spec.case),
    ...spec.case.faces.flatMap((face, index) => auditFace(spec, face, `case.faces[${index}].outline`)),
  ]
}

function auditBearings({ saddles, rods }: EngineCase): readonly Finding[] {
  const outOfOrder = saddles.flatMap((second, index) => {
    const first = saddles[index - 1]
    return first === undefined || second.at > first.at
      ? []
      : [fault('saddles-out-of-order', { first: first.id, second: second.id }, `case.saddles[${index}].at`)]
  })
  const all = [
    ...saddles.map((saddle, index) => ({ ...saddle, path: `case.saddles[${index}]` })),
    ...rods.map((rod, index) => ({ ...rod, path: `case.rods[${index}]` })),
  ].toSorted((a, b) => a.at - b.at)
  return [
    ...outOfOrder,
    ...all.flatMap((second, index) => {
      const first = all[index - 1]
      if (first === undefined) return []
      const by = difference(sum(first.at, half(first.width)), difference(second.at, half(second.width)))
      return by > 0
        ? [fault('bearings-overlap', { first: first.id, second: second.id, by: inMm(by) }, second.path)]
        : []
    }),
  ]
}

function auditBores({ cylinders, bankAngle, bore, pitch }: EngineCase): readonly Finding[] {
  const perBank = bankAngle > 0 ? Math.ceil(cylinders / 2) : cylinders
  return perBank > 1 && bore >= pitch
    ? [fault('bores-overlap', { bore: inMm(bore), pitch: inMm(pitch) }, 'case.pitch')]
    : []
}

function auditRods({ cylinders, rods }: EngineCase): readonly Finding[] {
  const seen = new Set<number>()
  return [
    ...rods.flatMap(({ id, cylinder }, index) => {
      const path = `case.rods[${index}].cylinder`
      if (cylinder > cylinders) return [fault('rod-without-cylinder', { rod: id, cylinder, cylinders }, path)]
      return seen.size === seen.add(cylinder).size
        ? [fault('cylinder-with-two-rods', { cylinder }, path)]
        : []
    }),
    ...(rods.length > 0 && rods.length < cylinders
      ? [doubt('rods-missing', { rods: rods.length, cylinders }, 'case.rods')]
      : []),
  ]
}

interface Part {
  readonly what: Phrase
  readonly at: Place
  readonly path: string
}

function auditFace(spec: EngineSpec, face: Face, path: string): readonly Finding[] {
  const parts: readonly Part[] = [
    ...spec.fasteners.flatMap(({ face: id, number, at }, index) =>
      id === face.id ? [{ what: fastenerNumbered(number), at, path: `fasteners[${index}].at` }] : [],
    ),
    ...spec.case.dowels.flatMap((dowel, index) =>
      dowel.face === face.id
        ? [{ what: dowelCalled(spec, dowel), at: dowel.at, path: `case.dowels[${index}].at` }]
        : [],
    ),
    ...spec.case.oilPassages.flatMap(({ face: id, name, at }, index) =>
      id === face.id ? [{ what: passageCalled(name), at, path: `case.oilPassages[${index}].at` }] : [],
    ),
    ...spec.case.faceParts.flatMap(({ face: id, name, at }, index) =>
      id === face.id ? [{ what: facePartCalled(name), at, path: `case.faceParts[${index}].at` }] : [],
    ),
  ]
  const { outline } = face
  return [
    ...(outline === undefined ? farOutside(spec, face, parts) : outside(face, outline, parts)),
    ...(outline !== undefined && crossesItself(pointsOf(outline))
      ? [fault('outline-crosses-itself', { face: face.name }, path)]
      : []),
    ...collisions(spec, face),
  ]
}

function outside(face: Face, outline: readonly Place[], parts: readonly Part[]): readonly Finding[] {
  const edge = pointsOf(outline)
  return parts
    .filter(({ at }) => !insidePolygon(edge, pointAt(at)))
    .map(({ what, at, path }) => fault('outside-outline', { what, face: face.name, ...placeOf(at) }, path))
}

/** An outline that is grown takes in whatever there is; a part further out than two pitches is a slip of the pen. */
function farOutside(spec: EngineSpec, face: Face, parts: readonly Part[]): readonly Finding[] {
  const { saddles, pitch } = spec.case
  const along =
    saddles.length > 0 && (face.plane === 'plan' || face.plane === 'plus-side' || face.plane === 'minus-side')
  const least = Math.min(...saddles.map(({ at }) => at)) - 2 * pitch
  const most = Math.max(...saddles.map(({ at }) => at)) + 2 * pitch
  return parts
    .filter(({ at: [x, y] }) => Math.abs(y) > 4 * pitch || (along && (x < least || x > most)))
    .map(({ what, at, path }) => fault('far-outside', { what, face: face.name, ...placeOf(at) }, path))
}

/** Two fasteners, or a fastener and a dowel, nearer than they are thick. Sorted along x, so that only neighbours are compared. */
function collisions(spec: EngineSpec, face: Face): readonly Finding[] {
  const diameters = new Map(spec.fastenerGroups.map(({ id, thread }) => [id, thread.diameter]))
  const discs = [
    ...spec.fasteners.map(({ face: id, number, at, group }, index) => ({
      ...{ face: id, at, what: fastenerNumbered(number), path: `fasteners[${index}].at` },
      diameter: diameters.get(group) ?? 0,
    })),
    ...spec.case.dowels.map((dowel, index) => ({
      ...{ face: dowel.face, at: dowel.at, what: dowelCalled(spec, dowel), path: `case.dowels[${index}].at` },
      diameter: dowel.diameter,
    })),
    ...spec.case.faceParts.flatMap((part, index) =>
      'diameter' in part
        ? [
            {
              ...{ face: part.face, at: part.at, what: facePartCalled(part.name) },
              ...{ path: `case.faceParts[${index}].at`, diameter: part.diameter },
            },
          ]
        : [],
    ),
  ]
    .filter((disc) => disc.face === face.id)
    .toSorted((a, b) => a.at[0] - b.at[0])
  const largestDiameter = Math.max(0, ...discs.map(({ diameter }) => diameter))
  return discs.flatMap((first, index) => {
    for (let next = index + 1; next < discs.length; next++) {
      const second = discs[next]
      if (second === undefined || second.at[0] - first.at[0] >= largestDiameter) break
      const apart = Math.hypot(second.at[0] - first.at[0], second.at[1] - first.at[1])
      if (apart >= (first.diameter + second.diameter) / 2) continue
      // One finding for each: a heap of a thousand would make half a million.
      return [
        fault('parts-collide', { first: first.what, second: second.what, face: face.name }, second.path),
      ]
    }
    return []
  })
}

function placeOf([x, y]: Place): { readonly x: Amount; readonly y: Amount } {
  return { x: inMm(x), y: inMm(y) }
}

function inMm(length: Length): Amount {
  return lengthAmount(length, 'mm', 1)
}

export function fastenerNumbered(number: string): Phrase {
  return { code: 'fastenerNumbered', facts: { number } }
}

export function dowelCalled(spec: EngineSpec, dowel: Dowel): Phrase {
  return { code: 'dowelCalled', facts: { dowel: dowelNumber(spec.case.dowels, dowel) } }
}

function facePartCalled(name: string): Phrase {
  return { code: 'facePartCalled', facts: { name } }
}

function passageCalled(name: string): Phrase {
  return { code: 'passageCalled', facts: { name } }
}
