import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import {
  bareFacts,
  knobPlace,
  numberCapital,
  protractorPlace,
  sceneOf,
  usualPxPerMm,
} from '../../core/layout/index.ts'
import type { DrawingSubject, Reader, Sheet, View } from '../../core/layout/index.ts'
import type { EngineSpec } from '../../core/engine/index.ts'
import { degrees } from '../../core/quantity/index.ts'
import { en } from '../../core/words/index.ts'
import { engineFile } from '../engine-files.ts'
import { specOf } from './spec-of.ts'

/** How a new bench is read. */
const reader: Reader = { distance: 1, pxPerMm: usualPxPerMm }

function sheetOf({ width, height }: { width: number; height: number }): Sheet {
  return { widthPx: width, heightPx: height, capitalPx: numberCapital(reader, width) }
}

/**
 * Where on the page a fastener's middle is drawn, the face lying as it does at first; the engine by its id or its spec. What
 * the drawing is about decides how much of the sheet is left to the case.
 */
export async function onTheDrawing(
  page: Page,
  engine: string | EngineSpec,
  face: string,
  fastener: string,
  subject: DrawingSubject = 'tightening',
) {
  const spec = typeof engine === 'string' ? await shipped(engine) : engine
  const drawn = spec.case.faces.find(({ id }) => id === face)
  const board = await page
    .getByRole('region', { name: en.buildWindow.drawing })
    .locator('.board')
    .boundingBox()
  if (!drawn || !board) throw new Error(`${face} is not on the page`)
  const { frame, shapes } = sceneOf(
    en,
    spec,
    { ...bareFacts(face), subject },
    { from: drawn.workedFrom, turn: 0 },
    sheetOf(board),
  )
  const disc = shapes.find((shape) => shape.about === `fastener/${fastener}` && shape.kind === 'circle')
  if (disc?.kind !== 'circle') throw new Error(`${fastener} is not on the drawing`)
  return {
    x: board.x + ((disc.x - frame.left) * board.width) / frame.width,
    y: board.y + ((disc.y - frame.top) * board.height) / frame.height,
  }
}

/** The bare drawing of a face that lies in a way of its own, and where on the page a place of it is. */
export async function sceneOnPage(
  page: Page,
  spec: EngineSpec,
  face: string,
  view: View,
  subject: DrawingSubject,
) {
  const board = await page
    .getByRole('region', { name: en.buildWindow.drawing })
    .locator('.board')
    .boundingBox()
  if (!board) throw new Error('there is no drawing on the page')
  const scene = sceneOf(en, spec, { ...bareFacts(face), subject }, view, sheetOf(board))
  const px = scene.frame.width / board.width
  const onPage = (x: number, y: number) => ({
    x: board.x + (x - scene.frame.left) / px,
    y: board.y + (y - scene.frame.top) / px,
  })
  return { scene, onPage }
}

async function shipped(engine: string): Promise<EngineSpec> {
  return specOf(await readFile(engineFile(engine), 'utf8'))
}

/** Where on the page the knobs of the protractor around a fastener are while its handle stands straight up. */
export async function protractorKnobs(page: Page, spec: EngineSpec, face: string, fastener: string) {
  const drawn = spec.case.faces.find(({ id }) => id === face)
  const board = await page
    .getByRole('region', { name: en.buildWindow.drawing })
    .locator('.board')
    .boundingBox()
  if (!drawn || !board) throw new Error(`${face} is not on the page`)
  const number = spec.fasteners.find(({ id }) => id === fastener)!.number
  const facts = {
    ...bareFacts(face),
    subject: 'tightening',
    fasteners: { [fastener]: { number, state: 'next', share: 0.5 } },
  } as const
  const scene = sceneOf(en, spec, facts, { from: drawn.workedFrom, turn: 0 }, sheetOf(board))
  const px = scene.frame.width / board.width
  const place = protractorPlace(scene, fastener, px)!
  const onPage = (x: number, y: number) => ({
    x: board.x + (x - scene.frame.left) / px,
    y: board.y + (y - scene.frame.top) / px,
  })
  const at = (direction: number) => {
    const { x, y } = knobPlace(place, degrees(direction))
    return onPage(x, y)
  }
  return { middle: onPage(place.x, place.y), start: at(0), end: at(120), at }
}

/**
 * How many values of the drawing's pixels differ by a quarter or more once all of it is drawn again: after a change it is drawn
 * where the change is, and looks as if all had been. The edge of a disc that is drawn in part may be a shade lighter.
 */
export function pixelsLeftBehind(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const frame = () => new Promise((resolve) => requestAnimationFrame(resolve))
    const pixels = () =>
      [...document.querySelectorAll<HTMLCanvasElement>('.board canvas')].map(
        (canvas) => canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height).data,
      )
    for (let frames = 0; frames < 3; frames += 1) await frame()
    const inParts = pixels()
    document.fonts.dispatchEvent(new Event('loadingdone')) // letters that have come are drawn, wherever they stand
    for (let frames = 0; frames < 3; frames += 1) await frame()
    const whole = pixels()
    if (whole.length === 0) throw new Error('nothing is drawn')
    return whole.reduce(
      (sum, each, index) =>
        sum + each.filter((value, at) => Math.abs(value - inParts[index]![at]!) > 64).length,
      0,
    )
  })
}
