import type { Context } from 'konva/lib/Context.js'
import { Layer } from 'konva/lib/Layer.js'
import { overlap, type Box } from '../../core/plane/index.ts'

/** Of more places than this all is drawn: to look which shapes reach into them would take longer. */
const mostPlaces = 100

/**
 * A layer of which only the places are drawn again at which something has changed: of hundreds of numbers on a face a pull
 * changes two. A draw of which no place was named is of all.
 */
export class PartlyDrawnLayer extends Layer {
  /** In mm on the sheet; null where none was named. */
  #places: readonly Box[] | 'all' | null = null
  #drawing: readonly Box[] | null = null

  /** What lies there, in mm on the sheet, is no longer as it is drawn. */
  change(place: Box) {
    if (this.#places === 'all') return
    const places = [...(this.#places ?? []), place]
    this.#places = places.length > mostPlaces ? 'all' : places
  }

  changeAll() {
    this.#places = 'all'
  }

  /** Whether what lies there is among what is drawn just now. */
  isDrawn(place: Box): boolean {
    return this.#drawing === null || this.#drawing.some((each) => overlap(each, place))
  }

  override drawScene(...on: Parameters<Layer['drawScene']>): this {
    const places = this.#places
    this.#places = null
    if (places === null || places === 'all') return super.drawScene(...on)
    const context = this.getCanvas().getContext()
    const pixels = places.map((place) => this.#pixelsOf(place))
    inPixels(context, (bare) => {
      for (const [x, y, width, height] of pixels) bare.clearRect(x, y, width, height)
    })
    this.#drawing = places
    this.clearBeforeDraw(false)
    this.clipFunc((clipped: Context) =>
      inPixels(clipped, (bare) => {
        for (const [x, y, width, height] of pixels) bare.rect(x, y, width, height)
      }),
    )
    try {
      return super.drawScene(...on)
    } finally {
      this.#drawing = null
      this.clearBeforeDraw(true)
      this.setAttr('clipFunc', undefined)
    }
  }

  /** Whole pixels of the canvas, so that no edge of a place is drawn half: from where, how wide and how high. */
  #pixelsOf({ left, top, width, height }: Box): readonly [number, number, number, number] {
    const [scale = 1, , , , x = 0, y = 0] = this.getAbsoluteTransform().getMatrix()
    const ratio = this.getCanvas().getPixelRatio()
    const from = { x: Math.floor((left * scale + x) * ratio), y: Math.floor((top * scale + y) * ratio) }
    const to = {
      x: Math.ceil(((left + width) * scale + x) * ratio),
      y: Math.ceil(((top + height) * scale + y) * ratio),
    }
    return [from.x, from.y, to.x - from.x, to.y - from.y]
  }
}

/** Does something to a canvas in its own pixels; what was made of a path stays. */
function inPixels({ _context: bare }: Context, work: (bare: CanvasRenderingContext2D) => void): void {
  bare.save()
  bare.setTransform(1, 0, 0, 1, 0, 0)
  work(bare)
  bare.restore()
}
