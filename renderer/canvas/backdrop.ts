import type { Layer } from 'konva/lib/Layer.js'
import { Shape } from 'konva/lib/Shape.js'
import type { Theme } from './look.ts'

/** A picture under a drawing. */
export interface Backdrop {
  readonly image: ImageBitmap
  /** From the picture's pixels to mm of the sheet, in the order of a canvas. */
  readonly matrix: readonly [number, number, number, number, number, number]
  /** From 0 to 1. */
  readonly opacity: number
}

const shown = new WeakMap<Layer, Backdrop>()

/**
 * Shows a picture on the lowest layer, or none. The ground lies over it as print on a page: what is dark on either stays dark. In the dark
 * theme the picture is reversed, and what is light stays light.
 */
export function showBackdrop(layer: Layer, ground: Layer, backdrop: Backdrop | null, theme: Theme): void {
  const isDark = theme === 'dark'
  layer.getNativeCanvasElement().style.filter = isDark ? 'invert(1)' : ''
  ground.getNativeCanvasElement().style.mixBlendMode = backdrop === null ? '' : isDark ? 'screen' : 'multiply'
  if (shown.get(layer) === backdrop || (backdrop === null && !shown.has(layer))) return
  layer.destroyChildren()
  if (backdrop === null) shown.delete(layer)
  else {
    shown.set(layer, backdrop)
    const { image, matrix, opacity } = backdrop
    const node = new Shape({ listening: false, perfectDrawEnabled: false })
    node.sceneFunc(({ _context: context }) => {
      context.save()
      context.transform(...matrix)
      context.globalAlpha = opacity
      context.imageSmoothingQuality = 'high'
      context.drawImage(image, 0, 0)
      context.restore()
    })
    layer.add(node)
  }
  layer.batchDraw()
}
