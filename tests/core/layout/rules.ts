import {
  capitalShare,
  textBox,
  type Box,
  type Scene,
  type Sheet,
  type TextShape,
} from '../../../core/layout/index.ts'
import { boxOf, overlap, textsOf } from './checks.ts'

/** How often each rule of the drawing was looked at, and what broke it. */
export interface Findings {
  readonly looked: Map<Rule, number>
  readonly broken: Map<Rule, string[]>
}

export const rules = [
  'a number in its disc',
  'a number that can be read',
  'a name nearest to its own part',
  'no text over another',
  'no text cut off by the edge of the sheet',
  'no crosshair through a name',
  'the callout in its place',
  'the case as large as its sheet lets it be',
  'the sheet taken by the case',
  'discs as large as their neighbours let them be',
] as const
export type Rule = (typeof rules)[number]

export function findings(): Findings {
  return {
    looked: new Map(rules.map((rule) => [rule, 0])),
    broken: new Map(rules.map((rule) => [rule, []])),
  }
}

/** Looks at one scene by all rules but that of the callout, which compares two. */
export function look(scene: Scene, sheet: Sheet, fasteners: number, where: string, into: Findings): void {
  const px = scene.frame.width / sheet.widthPx
  const note = (rule: Rule, isKept: boolean, what: string): void => {
    into.looked.set(rule, into.looked.get(rule)! + 1)
    if (!isKept) into.broken.get(rule)!.push(`${where}: ${what}`)
  }
  for (const number of numbersOf(scene)) {
    note('a number in its disc', isInItsDisc(scene, number), number.id)
    // Up to 40 fasteners on a sheet of a 1280 × 800 window: letters of 12 px at the least.
    if (fasteners <= 40 && sheet.widthPx >= 840 && sheet.heightPx >= 460)
      note('a number that can be read', number.capital / px / capitalShare >= 12, number.id)
  }
  for (const { name, own, parts } of namedParts(scene)) {
    const away = parts.map(({ id, box }) => ({ id, away: between(middle(textBox(name)), middle(box)) }))
    const least = Math.min(...away.map((each) => each.away))
    const nearest = away.find(({ id }) => id === own)
    note('a name nearest to its own part', (nearest?.away ?? Infinity) <= least + px / 2, name.id)
  }
  const texts = textsOf(scene).map((text) => ({ id: text.id, box: textBox(text) }))
  texts.forEach(({ id, box }, index) => {
    const over = texts.slice(index + 1).find((other) => overlap(box, other.box))
    note('no text over another', over === undefined, `${id} × ${over?.id}`)
  })
  for (const { id, box } of texts)
    note('no text cut off by the edge of the sheet', lieIn(box, grownBy(scene.frame, px)), id)
  const crosshair = scene.shapes.filter(({ role }) => role === 'crosshair').map(boxOf)
  if (crosshair.length > 0)
    for (const { id, role } of namesIn(scene))
      note(
        'no crosshair through a name',
        !crosshair.some((line) => overlap(line, texts.find((text) => text.id === id)!.box)),
        `${id} (${role})`,
      )
  note(
    'the case as large as its sheet lets it be',
    shareOfSheet(scene) >= 0.8,
    shareOfSheet(scene).toFixed(2),
  )
}

/**
 * Looks at a demo engine's scene while bolts are tightened: on a sheet of a usual window title, callout and names leave the case
 * most of its height or width, and discs grow with the sheet.
 */
export function lookAtSizes(scene: Scene, sheet: Sheet, where: string, into: Findings): void {
  const px = scene.frame.width / sheet.widthPx
  const note = (rule: Rule, held: boolean, what: string): void => {
    into.looked.set(rule, into.looked.get(rule)! + 1)
    if (!held) into.broken.get(rule)!.push(`${where}: ${what}`)
  }
  const edge = boxOf(scene.shapes.find(({ role }) => role === 'outline')!)
  const share = Math.max(edge.width / scene.frame.width, edge.height / scene.frame.height)
  note('the sheet taken by the case', share >= (sheet.heightPx >= 460 ? 0.7 : 0.6), share.toFixed(2))
  const isInLanes = scene.shapes.some(({ id }) => id.endsWith('/lane-disc'))
  const discs = scene.shapes.flatMap((shape) =>
    shape.kind === 'circle' && /^fastener\/.+\/disc$/.test(shape.id) ? [shape] : [],
  )
  if (isInLanes || discs.length < 2) return
  const apart = Math.min(
    ...discs.flatMap((one, index) =>
      discs.slice(index + 1).map((other) => Math.hypot(one.x - other.x, one.y - other.y) / px),
    ),
  )
  const largest = (2 * Math.max(...discs.map(({ radius }) => radius))) / px
  const wanted = Math.min(0.065 * sheet.heightPx, 0.4 * apart)
  note(
    'discs as large as their neighbours let them be',
    largest >= wanted,
    `${largest.toFixed(1)} of ${wanted.toFixed(1)} px`,
  )
}

/** Where the callout stands on the sheet, in px from its corner: the left and upper edge of its frame. */
export function calloutCorner(
  scene: Scene,
  sheet: Sheet,
): { readonly left: number; readonly top: number } | null {
  const value = textsOf(scene).find(({ role }) => role === 'next-value')
  if (value === undefined) return null
  const box = textBox(value)
  const frames = scene.shapes.filter(
    (shape) =>
      shape.layer === 'overlay' && shape.kind === 'line' && shape.closed && overlap(boxOf(shape), box),
  )
  const px = scene.frame.width / sheet.widthPx
  const left = Math.min(...frames.map((frame) => boxOf(frame).left))
  const top = Math.min(...frames.map((frame) => boxOf(frame).top))
  return { left: (left - scene.frame.left) / px, top: (top - scene.frame.top) / px }
}

/** Every text on bare paper: not in a disc, a sign or on a plate. */
function namesIn(scene: Scene): readonly TextShape[] {
  return textsOf(scene).filter(({ id, role }) => role.endsWith('label') && !id.startsWith('fastener/'))
}

function numbersOf(scene: Scene): readonly TextShape[] {
  return textsOf(scene).filter(({ id }) => /^fastener\/[^/]+\/number/.test(id))
}

/** The corners of the number's box lie inside the disc, the diamond or the disc in a lane that bears its fastener's name. */
function isInItsDisc(scene: Scene, number: TextShape): boolean {
  const { left, top, width, height } = textBox(number)
  const corners = [left, left + width].flatMap((x) => [top, top + height].map((y) => ({ x, y })))
  return scene.shapes.some((shape) => {
    if (shape.about !== number.about || !/\/(disc|lane-disc)$/.test(shape.id)) return false
    const { left, top, width, height } = boxOf(shape)
    const [x, y, radius] = [left + width / 2, top + height / 2, width / 2]
    return corners.every((corner) =>
      shape.kind === 'circle'
        ? Math.hypot(corner.x - x, corner.y - y) <= radius
        : Math.abs(corner.x - x) + Math.abs(corner.y - y) <= radius,
    )
  })
}

interface NamedPart {
  readonly name: TextShape
  readonly own: string
  readonly parts: readonly { readonly id: string; readonly box: Box }[]
}

/** Every bearing's name with all the bearings of its row, of which its own has to be the nearest. */
function namedParts(scene: Scene): readonly NamedPart[] {
  const parts = new Map<string, Box[]>()
  for (const shape of scene.shapes) {
    const id = /^half\/([^/]+)\/(upper|lower)\/(shell|unknown|landmark)$/.exec(shape.id)?.[1]
    if (id !== undefined) parts.set(id, [...(parts.get(id) ?? []), boxOf(shape)])
  }
  const wholes = [...parts].map(([id, boxes]) => ({ id, box: around(boxes) }))
  return textsOf(scene).flatMap((name): readonly NamedPart[] => {
    const own = /^bearing\/([^/]+)\/name$/.exec(name.id)?.[1]
    return own === undefined ? [] : [{ name, own, parts: wholes }]
  })
}

/** How much of the free width or height the case takes: what is left of the sheet between the texts round it. */
function shareOfSheet(scene: Scene): number {
  const edge = boxOf(scene.shapes.find(({ role }) => role === 'outline')!)
  const { frame } = scene
  const [right, bottom] = [edge.left + edge.width, edge.top + edge.height]
  const furniture = scene.shapes.flatMap((shape) =>
    shape.kind === 'text' || shape.id === 'callout' || shape.id.endsWith('/lane-disc') ? [boxOf(shape)] : [],
  )
  const beside = furniture.filter((box) => box.top < bottom && box.top + box.height > edge.top)
  const over = furniture.filter((box) => box.top >= bottom || box.top + box.height <= edge.top)
  const left = Math.max(
    frame.left,
    ...beside.map((box) => box.left + box.width).filter((x) => x <= edge.left),
  )
  const far = Math.min(frame.left + frame.width, ...beside.map((box) => box.left).filter((x) => x >= right))
  const top = Math.max(frame.top, ...over.map((box) => box.top + box.height).filter((y) => y <= edge.top))
  const foot = Math.min(frame.top + frame.height, ...over.map((box) => box.top).filter((y) => y >= bottom))
  return Math.max(edge.width / (far - left), edge.height / (foot - top))
}

/** Larger on every side: half a letter's stroke is no letter lost. */
function grownBy({ left, top, width, height }: Box, by: number): Box {
  return { left: left - by, top: top - by, width: width + 2 * by, height: height + 2 * by }
}

function lieIn(box: Box, frame: Box): boolean {
  return (
    box.left >= frame.left &&
    box.top >= frame.top &&
    box.left + box.width <= frame.left + frame.width &&
    box.top + box.height <= frame.top + frame.height
  )
}

function middle({ left, top, width, height }: Box): { readonly x: number; readonly y: number } {
  return { x: left + width / 2, y: top + height / 2 }
}

function between(
  one: { readonly x: number; readonly y: number },
  other: { readonly x: number; readonly y: number },
): number {
  return Math.hypot(one.x - other.x, one.y - other.y)
}

function around(boxes: readonly Box[]): Box {
  const left = Math.min(...boxes.map((box) => box.left))
  const top = Math.min(...boxes.map((box) => box.top))
  const right = Math.max(...boxes.map((box) => box.left + box.width))
  const bottom = Math.max(...boxes.map((box) => box.top + box.height))
  return { left, top, width: right - left, height: bottom - top }
}
