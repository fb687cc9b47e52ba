import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { sceneOf } from '../../core/layout/index.ts'
import { readSpec } from '../../core/spec/index.ts'

/** Where on the page a fastener's middle is drawn, the face lying as it does at first. */
export async function onTheDrawing(page: Page, engine: string, face: string, fastener: string) {
  const read = readSpec(await readFile(`specs/${engine}.json`, 'utf8'))
  if (!read.ok) throw new Error(`${engine} cannot be read`)
  const drawn = read.spec.case.faces.find(({ id }) => id === face)
  const board = await page.getByRole('region', { name: 'Drawing' }).locator('.board').boundingBox()
  if (!drawn || !board) throw new Error(`${face} is not on the page`)
  const facts = { face, bearings: {}, fasteners: {}, path: null, callout: null, beads: {} } as const
  const sheet = { widthPx: board.width, heightPx: board.height, capitalPx: 12 }
  const { frame, shapes } = sceneOf(read.spec, facts, { from: drawn.workedFrom, turn: 0 }, sheet)
  const disc = shapes.find((shape) => shape.about === `fastener/${fastener}` && shape.kind === 'circle')
  if (disc?.kind !== 'circle') throw new Error(`${fastener} is not on the drawing`)
  return {
    x: board.x + ((disc.x - frame.left) * board.width) / frame.width,
    y: board.y + ((disc.y - frame.top) * board.height) / frame.height,
  }
}
