import { Layer } from 'konva/lib/Layer.js'
import { Shape as Node } from 'konva/lib/Shape.js'
import type { Box, Layer as LayerName, Shape } from '../../core/layout/index.ts'
import { boxBetween, cornersOf, overlap } from '../../core/plane/index.ts'
import { around, extentOf } from './extent.ts'
import type { Mark } from './marks.ts'
import { paint } from './paint.ts'
import { Reconciler } from './reconcile.ts'

interface Look {
  readonly marks: readonly Mark[]
  readonly extent: Box | null
}

/**
 * One layer of a board: a node for each shape, which paints the marks it was last given. Where a few shapes change, the layer
 * is cleared and drawn there alone: a pull or a move on a full face would otherwise draw hundreds of numbers again.
 */
export class Pane {
  readonly name: LayerName
  readonly layer = new Layer({ listening: false, clearBeforeDraw: false })
  readonly #reconciler: Reconciler<Node>
  readonly #marksOf: (shape: Shape) => readonly Mark[]
  readonly #looks = new WeakMap<Node, Look>()
  /** What is to be drawn again, in mm on the sheet; `all`, or null while nothing was asked for. */
  #stale: Box | 'all' | null = null
  /** What is being drawn; null for all of it. */
  #part: Box | null = null

  constructor(name: LayerName, marksOf: (shape: Shape) => readonly Mark[]) {
    this.name = name
    this.#marksOf = marksOf
    this.#reconciler = new Reconciler({
      create: (shape) => this.#create(shape),
      change: (node, shape) => this.#give(node, shape),
      remove: (node) => {
        this.#spoil(this.#looks.get(node)?.extent ?? null)
        node.destroy()
      },
      settle: (node, index) => {
        if (this.layer.children[index] === node) return
        this.#spoil(this.#looks.get(node)?.extent ?? null)
        node.zIndex(index)
      },
    })
    this.layer.on('beforeDraw', () => this.#begin())
    this.layer.on('draw', () => this.#end())
  }

  /** Shows those of the shapes that belong here. `redrawAll` repeats every shape's look, and draws all of it. */
  show(shapes: readonly Shape[], redrawAll: boolean): void {
    const own = shapes.filter(({ layer }) => layer === this.name)
    if (!this.#reconciler.show(own, redrawAll)) return
    if (redrawAll) this.#stale = 'all'
    this.layer.batchDraw()
  }

  /** Draws all of it with the next frame. */
  drawAll(): void {
    this.#stale = 'all'
    this.layer.batchDraw()
  }

  #create(shape: Shape): Node {
    const node = new Node({ listening: false, perfectDrawEnabled: false })
    node.sceneFunc(({ _context: context }) => {
      const look = this.#looks.get(node)
      const isOutside = this.#part !== null && !(look?.extent && overlap(look.extent, this.#part))
      if (look !== undefined && !isOutside) paint(context, look.marks)
    })
    this.layer.add(node)
    this.#give(node, shape)
    return node
  }

  #give(node: Node, shape: Shape): void {
    const marks = this.#marksOf(shape)
    const extent = extentOf(marks)
    this.#spoil(around(extent, this.#looks.get(node)?.extent ?? null))
    this.#looks.set(node, { marks, extent })
  }

  #spoil(extent: Box | null): void {
    if (this.#stale !== 'all') this.#stale = around(this.#stale, extent)
  }

  #begin(): void {
    this.#part = this.#stale === 'all' ? null : this.#stale
    this.#stale = null
    const canvas = this.layer.getCanvas()
    const context = canvas.getContext()._context
    context.save()
    if (this.#part === null) return canvas.getContext().clear()
    // Whole pixels of the screen, and one round them: half a pixel at the edge would stay as it was.
    const toScreen = this.layer.getAbsoluteTransform()
    const ratio = canvas.getPixelRatio()
    const down = (px: number) => (Math.floor(px * ratio) - 1) / ratio
    const up = (px: number) => (Math.ceil(px * ratio) + 1) / ratio
    const { left, top, width, height } = this.#part
    const least = toScreen.point({ x: left, y: top })
    const most = toScreen.point({ x: left + width, y: top + height })
    const area = boxBetween({ x: down(least.x), y: down(least.y) }, { x: up(most.x), y: up(most.y) })
    context.beginPath()
    context.rect(area.left, area.top, area.width, area.height)
    context.clip()
    context.clearRect(area.left, area.top, area.width, area.height)
    const [one, other] = [cornersOf(area)[0]!, cornersOf(area)[2]!]
    const toSheet = toScreen.copy().invert()
    this.#part = boxBetween(toSheet.point(one), toSheet.point(other))
  }

  #end(): void {
    this.layer.getCanvas().getContext()._context.restore()
    this.#part = null
  }
}
