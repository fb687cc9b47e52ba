import { inMillimetres } from '../quantity/index.ts'
import { beyond, endsOf, onASide } from './axis.ts'
import { middleOf, type Point } from './box.ts'
import { moved, type Drawing } from './drawing.ts'
import { endNames, sideNames } from './end-names.ts'
import { labelBox, labelSize, type Label, type Line, type Place } from './lettering.ts'
import { acrossAnEnd, viewInWords } from './view.ts'

/** What is seen from where in the corner of the sheet, and NOSE and DRIVE END at the ends of the axis. */
export function signLabels(drawing: Drawing): readonly Label[] {
  const { spec, here, sizes } = drawing
  const corner = cornerSign(drawing)
  if (acrossAnEnd(here.face)) return corner
  const { nose, drive } = endsOf(drawing)
  const [noseName, driveName] = endNames(spec, here.face, sizes)
  const end = (about: string, lines: readonly Line[], point: Point, outwards: 1 | -1): Label => {
    const places = besides(drawing, point, outwards, lines)
    return {
      id: `${about}/name`,
      about,
      layer: 'ground',
      lines,
      places,
      target: { ...point, radius: 0, clear: 0 },
    }
  }
  return [...corner, end('nose', noseName, nose, -1), end('drive', driveName, drive, 1)]
}

/** In one line, else in a line for each of its parts; smaller where a small sheet has no room for that. */
function cornerSign({ sizes, spec, here, view, room }: Drawing): readonly Label[] {
  const words = viewInWords(spec.case, here.face, view)
  const parts = words.split(/(?<=,) /)
  const half = Math.ceil(parts.length / 2)
  const inTwo = [parts.slice(0, half).join(' '), parts.slice(half).join(' ')]
  const labels = [sizes.name, sizes.quiet].flatMap((capital) =>
    [[words], inTwo, parts].map((texts): Label => {
      const lines = texts.map((text): Line => ({ text, capital, weight: 'regular', role: 'label' }))
      const y = room.frame.top + labelSize(lines).height / 2 + sizes.px
      const place: Place = { x: room.frame.left + sizes.px, y, anchor: 'start' }
      return { id: 'sign', about: `face/${here.face.id}`, layer: 'ground', lines, places: [place] }
    }),
  )
  const free = labels.find(({ lines, places }) => places.every((place) => room.free(labelBox(lines, place))))
  return free === undefined ? [] : [free]
}

/**
 * What the shop calls the two sides of the engine, outside the case on each: fasteners are told by them. Along the case
 * they stand near its ends, so that a strip of free sheet is left between them. On a side of the case, the saddles behind it.
 */
export function sideLabels(drawing: Drawing): readonly Label[] {
  if (onASide(drawing)) return saddleNames(drawing)
  const { body, sizes, spec, here, along, across } = drawing
  // In a face across an end, x runs from side to side.
  const outwards = acrossAnEnd(here.face) ? along : across
  const edgewise = acrossAnEnd(here.face) ? across : along
  const centre = middleOf(body)
  const reach = (size: Point): number =>
    Math.abs(size.x) * (body.width / 2) + Math.abs(size.y) * (body.height / 2)
  return sideNames(spec, sizes).map((lines, index) => {
    const side = index === 0 ? 'plus' : 'minus'
    const sign = index === 0 ? 1 : -1
    const { width, height } = labelSize(lines)
    const off = reach(outwards) + (outwards.x !== 0 ? width : height) / 2
    const shares = acrossAnEnd(here.face) ? [0, 0.3, -0.3, 0.6, -0.6] : [-0.7, 0.7, 0.4, -0.4, 0]
    const places = [4, 14, 24].flatMap((gap) =>
      shares.map((share): Place => {
        const away = sign * (off + gap * sizes.px)
        const aside = share * reach(edgewise)
        return {
          x: centre.x + outwards.x * away + edgewise.x * aside,
          y: centre.y + outwards.y * away + edgewise.y * aside,
          anchor: 'middle',
        }
      }),
    )
    return { id: `side/${side}`, layer: 'ground', lines, places }
  })
}

/** Places on either side of the axis, just outside the case. */
function besides(drawing: Drawing, end: Point, outwards: 1 | -1, lines: readonly Line[]): readonly Place[] {
  const { along, across, sizes } = drawing
  const { width, height } = labelSize(lines)
  const lying = along.x !== 0
  const edge = moved(drawing, end, outwards * -(beyond - 4) * sizes.px, 0)
  const out = outwards * ((lying ? width : height) / 2)
  // Above the axis first, or right of it.
  const up = lying ? -across.y : across.x
  const aside = up * (11 * sizes.px + (lying ? height : width) / 2)
  const further = [0, 3, 6, 9, 12, 16, 20, 24].map((px) => px * outwards * sizes.px)
  return [
    ...further.flatMap((more) =>
      [1, -1].map((side): Place => ({ ...moved(drawing, edge, out + more, aside * side), anchor: 'middle' })),
    ),
    { ...moved(drawing, end, out + 3 * outwards * sizes.px, 0), anchor: 'middle' },
  ]
}

/** The names of the saddles at their centre lines, where there is room. */
function saddleNames(drawing: Drawing): readonly Label[] {
  const { sizes, spec, along } = drawing
  return spec.case.saddles.map(({ id, at, diameter }) => {
    const lines: readonly Line[] = [
      { text: id, capital: sizes.quiet, weight: 'regular', role: 'quiet-label' },
    ]
    const { width, height } = labelSize(lines)
    const extent = along.x !== 0 ? height : width
    const away = inMillimetres(diameter) / 2 + extent / 2 + 2 * sizes.px
    const places = [-1, 1].map((side): Place => {
      const point = drawing.place(inMillimetres(at), side * away)
      return { ...point, anchor: 'middle' }
    })
    return { id: `saddle/${id}/name`, layer: 'ground', lines, places }
  })
}
