import { bareFacts, sceneOf, type Role, type Scene } from '../../core/layout/index.ts'
import type { EngineSpec } from '../../core/engine/index.ts'
import type { Words } from '../../core/words/index.ts'
import type { Theme } from '../look/theme.svelte.ts'
import { svgOf } from './svg.ts'
import { thumbnailSize } from './thumbnail-size.ts'

/** What says nothing without words, or would be cut off at the edge of so small a sheet. */
const leftOut: ReadonlySet<Role> = new Set(['grid', 'tick-line', 'fastener-tick', 'nose'])
/** A number beside the case, of a face too full for it: only the ring at the fastener itself is drawn. */
const isBeside = (id: string) => id.endsWith('/lane-disc')
/** Round the case, in px. */
const air = 6

/**
 * An engine's first joint face as a small picture: the bare case as it is worked on, cut to its outline, without words.
 * Laid out on a sheet twice as large, of which the layout keeps half for what would stand beside the case.
 */
export function thumbnailOf(words: Words, spec: EngineSpec): Scene {
  const { width, height } = thumbnailSize
  const face = spec.case.faces[0]!
  const sheet = { widthPx: 2 * width, heightPx: 2 * height, capitalPx: 6 }
  const scene = sceneOf(words, spec, bareFacts(face.id), { from: face.workedFrom, turn: 0 }, sheet)
  const shapes = scene.shapes.filter(
    ({ kind, role, id }) => kind !== 'text' && !leftOut.has(role) && !isBeside(id),
  )
  return { frame: frameRound(scene, `face/${face.id}`), shapes, rows: [] }
}

/** The picture as an SVG for each look of the window. */
export function engineSvg(words: Words, spec: EngineSpec): (theme: Theme) => string {
  const scene = thumbnailOf(words, spec)
  return (theme) => svgOf(scene, { theme, widthPx: thumbnailSize.width, title: '' })
}

/** The thumbnail's sheet round the middle of an outline, as small as it can be. */
function frameRound({ shapes, frame }: Scene, outline: string): Scene['frame'] {
  const edge = shapes.find(({ id }) => id === outline)
  if (edge?.kind !== 'line') return frame
  const along = (axis: 0 | 1) => edge.points.filter((_, index) => index % 2 === axis)
  const [left, right] = [Math.min(...along(0)), Math.max(...along(0))]
  const [top, bottom] = [Math.min(...along(1)), Math.max(...along(1))]
  const room = { width: thumbnailSize.width - 2 * air, height: thumbnailSize.height - 2 * air }
  const px = Math.max((right - left) / room.width, (bottom - top) / room.height)
  const [width, height] = [thumbnailSize.width * px, thumbnailSize.height * px]
  return { left: (left + right - width) / 2, top: (top + bottom - height) / 2, width, height }
}
