import '../../../renderer/look/fonts.css'
import type { Layer } from 'konva/lib/Layer.js'
import { stages } from 'konva/lib/Stage.js'
import { createBoard, type Board } from '../../../renderer/canvas/board.ts'
import type { Scene } from '../../../core/layout/index.ts'
import type { Theme } from '../../../renderer/canvas/look.ts'
import { bareLayers } from './bare.ts'

/** The page that measures of painting run in: a board to show scenes on, and what it takes to do so. */
const container = document.querySelector<HTMLDivElement>('#board')!
let board: Board | null = null
let draws = 0

/** A layer tells of each drawing of it. */
function countDraws(): void {
  for (const layer of stages[0]?.getLayers() ?? []) layer.on('draw', () => (draws += 1))
}

const page = {
  size(width: number, height: number) {
    Object.assign(container.style, {
      position: 'fixed',
      inset: '0',
      width: `${width}px`,
      height: `${height}px`,
    })
    document.body.style.margin = '0'
  },
  /** How long `show` itself took, in ms. */
  show(scene: Scene, theme: Theme): number {
    if (board === null) {
      board = createBoard(container, { tap: () => undefined })
      countDraws()
    }
    const from = performance.now()
    board.show(scene, theme)
    return performance.now() - from
  },
  drawsSince(): number {
    const since = draws
    draws = 0
    return since
  },
  /** Until everything that was asked for is on the screen. */
  painted: () =>
    new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))),
  async fonts() {
    const faces = [400, 700].map((weight) =>
      document.fonts.load(`${weight} 20px 'Atkinson Hyperlegible Next'`),
    )
    await Promise.all(faces)
  },
  layers: () => stages[0]?.getLayers().length ?? 0,
  /** Drawing all layers again, ours and plain Konva's by turns, until the pixels are there; ms for each, in pairs. */
  compare(scene: Scene, theme: Theme, times: number): readonly (readonly [number, number])[] {
    const ours = stages[0]?.getLayers() ?? []
    const bare = bareLayers(container, scene, theme)
    return Array.from({ length: times }, () => [timeToDraw(ours), timeToDraw(bare)] as const)
  },
}

function timeToDraw(layers: readonly Layer[]): number {
  const from = performance.now()
  for (const layer of layers) {
    layer.drawScene()
    // Reading a pixel back waits until all that was drawn before it is there.
    layer.getNativeCanvasElement().getContext('2d')?.getImageData(0, 0, 1, 1)
  }
  return performance.now() - from
}

export type Page = typeof page
Object.assign(globalThis, { page })
