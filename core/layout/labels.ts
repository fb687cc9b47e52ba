import { bearingLabels } from './bearing-labels.ts'
import { beadPath, drawnBeads, keepOutId } from './beads.ts'
import type { DrawnBearing } from './bearings.ts'
import { boreOutline, type Bore } from './bores.ts'
import { boxAround, cornersOf, grown, middleOf, turned } from './box.ts'
import { cornersOnSheet, moved, onSheet, placeOf, type Drawing } from './drawing.ts'
import { inMillimetres } from '../quantity/index.ts'
import { beside, labelBox, labelSize, letterAll, type Label, type Line, type Place } from './lettering.ts'
import { areaOf } from './on-face.ts'
import { inside } from './polygon.ts'
import type { Box, Shape } from './scene.ts'
import { sideLabels } from './signs.ts'

/** Everything that a label may not cover, and what it may cover at a cost. */
export function takeRoom(drawing: Drawing, bearings: readonly DrawnBearing[], bores: readonly Bore[]): void {
  const { room, discs, here, sizes } = drawing
  const gap = 2 * sizes.px
  room.takeLine(onSheet(drawing, drawing.outline), true, gap)
  for (const disc of discs) room.takeCircle(disc, disc.reach + gap / 2)
  for (const { whole } of bearings) room.takeBox(grown(whole, gap))
  for (const dowel of here.dowels)
    room.takeCircle(placeOf(drawing, dowel.at), inMillimetres(dowel.diameter) / 2 + gap)
  for (const passage of here.oilPassages) room.takeBox(grown(areaBox(drawing, passage), gap))
  for (const { bead } of drawnBeads(drawing)) {
    room.takeLine(beadPath(drawing, bead), bead.closed, inMillimetres(bead.width) / 2 + gap)
    for (const zone of bead.keepOut) room.takeBox(grown(areaBox(drawing, zone), gap))
  }
  for (const bore of bores) room.crossAtCost(onSheet(drawing, boreOutline(bore)), true, 0.4)
  for (const opening of drawing.openings) room.crossAtCost(cornersOnSheet(drawing, opening), true, 4)
  const { frame } = room
  const origin = drawing.place(0, 0)
  const far = Math.hypot(frame.width, frame.height)
  const axis = [moved(drawing, { x: origin.x, y: origin.y }, -far, 0), moved(drawing, origin, far, 0)]
  room.crossAtCost(axis, false, 14)
}

function areaBox(drawing: Drawing, part: Parameters<typeof areaOf>[0]): Box {
  return boxAround(cornersOnSheet(drawing, areaOf(part)))
}

/** The labels of sides, bearings, halves, zones, bores and dowels, each where there is room for it: the important ones first. */
export function labelShapes(
  drawing: Drawing,
  bearings: readonly DrawnBearing[],
  bores: readonly Bore[],
): readonly Shape[] {
  const { room } = drawing
  return [
    ...letterAll(sideLabels(drawing), room),
    ...bearingLabels(drawing, bearings),
    ...halfLabels(drawing, bearings),
    ...letterAll(zoneLabels(drawing), room),
    ...letterAll(boreLabels(drawing, bores), room),
    ...letterAll(dowelLabels(drawing), room),
  ]
}

/** Which half is which, said once: at the first bearing that has room for both words in like places, else at leaders. */
function halfLabels(drawing: Drawing, bearings: readonly DrawnBearing[]): readonly Shape[] {
  const { room } = drawing
  for (const drawn of bearings)
    for (const way of ['beyond', -1, 1] as const) {
      const labels = (['upper', 'lower'] as const).map((half) => halfLabel(drawing, drawn, half, way))
      const clear = ({ lines, places }: Label): boolean =>
        places.every((place) => room.free(labelBox(lines, place)) && room.cost(labelBox(lines, place)) < 5)
      if (labels.every(clear)) return letterAll(labels, room)
    }
  const [first] = bearings
  if (first === undefined) return []
  const labels = (['upper', 'lower'] as const).map((half) => halfLabel(drawing, first, half, 'beyond'))
  return letterAll(labels, room)
}

/** The word for a half, beyond its end or on the nose's or the drive's side of it. */
function halfLabel(
  drawing: Drawing,
  { bearing, middle, reach, whole, upper, lower }: DrawnBearing,
  half: 'upper' | 'lower',
  way: 'beyond' | 1 | -1,
): Label {
  const { sizes, along, across } = drawing
  const gap = 5 * sizes.px
  const side = half === 'upper' ? 1 : -1
  const lines: readonly Line[] = [
    { text: half, capital: sizes.quiet, weight: 'regular', role: 'quiet-label' },
  ]
  const lying = along.x !== 0
  const aside = (lying ? whole.width : whole.height) / 2 + gap
  const { width } = labelSize(lines)
  const middleOfHalf = lying ? reach / 2 : Math.max(reach / 2, width / 2)
  const place =
    way === 'beyond'
      ? beside(moved(drawing, middle, 0, side * (reach + gap)), turned(across, side), lines)
      : beside(moved(drawing, middle, way * aside, side * middleOfHalf), turned(along, way), lines)
  const box = half === 'upper' ? upper : lower
  return {
    id: `half-name/${half}`,
    about: `half/${bearing.id}/${half}`,
    layer: 'ground',
    lines,
    places: [place],
    target: { ...middleOf(box), radius: Math.max(box.width, box.height) / 2, box, clear: 3 * sizes.px },
  }
}

/** Oil passages, and what a bead must keep out of. */
function zoneLabels(drawing: Drawing): readonly Label[] {
  const { here } = drawing
  const zones = drawnBeads(drawing).flatMap(({ bead }) =>
    bead.keepOut.map((zone, index) => ({
      id: keepOutId(bead, index),
      box: areaBox(drawing, zone),
      text: [zone.name, 'no sealant'],
      role: 'warning-label' as const,
    })),
  )
  const passages = here.oilPassages
    .filter(({ name }) => !zones.some(({ text }) => text[0] === name))
    .map((passage) => ({
      id: `oil-passage/${passage.id}`,
      box: areaBox(drawing, passage),
      text: [passage.name],
      role: 'quiet-label' as const,
    }))
  return [...zones, ...passages].map(({ id, box, text, role }) => {
    const capital = drawing.sizes.quiet
    const lines = text.map((each): Line => ({ text: each, capital, weight: 'regular', role }))
    return { id: `${id}/name`, about: id, layer: 'ground', lines, ...around(drawing, box, lines) }
  })
}

/** Where a bore's number may stand in it, as shares of its extent across and along: a way off its middle. */
const placesInBore = [0, 0.3, -0.3].flatMap((along) =>
  [0.5, -0.5, 0.68, -0.68, 0.35, -0.35, 0.2, -0.2].map((across) => ({ along, across })),
)

/** Each wholly inside its own bore and in no other, or left out: beside it, it could be read as another's. */
function boreLabels(drawing: Drawing, bores: readonly Bore[]): readonly Label[] {
  const { sizes } = drawing
  const edges = bores.map((bore) => onSheet(drawing, boreOutline(bore)))
  return bores.map((bore, index) => {
    const lines: readonly Line[] = [
      { text: `bore ${bore.number}`, capital: sizes.quiet, weight: 'regular', role: 'quiet-label' },
    ]
    const middle = drawing.place(bore.x, bore.y)
    const inOwn = (place: Place): boolean => {
      const corners = cornersOf(labelBox(lines, place))
      return edges.every((edge, other) =>
        corners.every((corner) => inside(edge, corner) === (other === index)),
      )
    }
    const places = placesInBore
      .map(({ along, across }): Place => {
        const at = moved(drawing, middle, along * bore.halfAlong, across * bore.halfAcross)
        return { ...at, anchor: 'middle' }
      })
      .filter(inOwn)
    const about = `bore/${bore.number}`
    return { id: `${about}/name`, about, layer: 'ground', lines, places }
  })
}

/** Said once, where it covers nothing: a dowel is known by its two circles. */
function dowelLabels(drawing: Drawing): readonly Label[] {
  const { here, room, sizes } = drawing
  const lines: readonly Line[] = [
    { text: 'dowel', capital: sizes.quiet, weight: 'regular', role: 'quiet-label' },
  ]
  for (const dowel of here.dowels) {
    const { x, y } = placeOf(drawing, dowel.at)
    const radius = inMillimetres(dowel.diameter) / 2
    const box = { left: x - radius, top: y - radius, width: 2 * radius, height: 2 * radius }
    const clear = around(drawing, box, lines).places.filter((place) => {
      const taken = labelBox(lines, place)
      return room.free(taken) && room.cost(taken) === 0
    })
    const about = `dowel/${dowel.id}`
    if (clear.length > 0) return [{ id: `${about}/name`, about, layer: 'ground', lines, places: clear }]
  }
  return []
}

/** Above, below, right and left of a box; else a leader line to it. */
function around(
  { sizes }: Drawing,
  box: Box,
  lines: readonly Line[],
): Required<Pick<Label, 'places' | 'target'>> {
  const gap = 3 * sizes.px
  const { x, y } = middleOf(box)
  const directions = [
    { x: 0, y: -1 },
    { x: 0, y: 1 },
    { x: 1, y: 0 },
    { x: -1, y: 0 },
  ]
  const places = directions.map((direction) =>
    beside(
      { x: x + direction.x * (box.width / 2 + gap), y: y + direction.y * (box.height / 2 + gap) },
      direction,
      lines,
    ),
  )
  return { places, target: { x, y, radius: Math.max(box.width, box.height) / 2, box, clear: gap } }
}
