import { Konva } from 'konva/lib/Global.js'
import { Layer } from 'konva/lib/Layer.js'
import { Stage } from 'konva/lib/Stage.js'
import { aboutAt, type Scene } from '../../core/layout/index.ts'
import { fitting, panned, zoomed, type Camera } from './camera.ts'
import { listen } from './gestures.ts'
import { looks, type Theme } from './look.ts'
import { drawingColours } from '../look/colours.ts'
import { marksOf } from './marks.ts'
import { Pane } from './pane.ts'
import { showBackdrop, type Backdrop } from './backdrop.ts'

/** A drawing surface in an element of the page. */
export interface Board {
  /** Shows a scene, over a picture where there is one. What is the same object as before is not touched; each layer is drawn once at most. */
  show(scene: Scene, theme: Theme, backdrop?: Backdrop | null): void
  zoomIn(): void
  zoomOut(): void
  /** The whole sheet again. */
  fit(): void
  /** Moves the sheet under the window, in px; false where all of it is in sight and nothing moves. */
  pan(dx: number, dy: number): boolean
  destroy(): void
}

const layerNames = ['ground', 'parts', 'overlay'] as const
/** A tap within this many px of a thing means the thing: a target of 32 px at the least. */
const reach = 16

/** A place on the sheet, in mm, or on the board, in px. */
export interface SheetPoint {
  readonly x: number
  readonly y: number
}

/** What a press takes hold of within `reach` mm: it hears where it is drawn to. Null where there is nothing to hold. */
export type Grab = (at: SheetPoint, reach: number) => ((to: SheetPoint) => void) | null

/** What a board reports and asks. */
export interface BoardEvents {
  /** Called with what lies under a tap, as the scene names it (`fastener/C4`); null beside everything. The place is in px. */
  readonly tap: (about: string | null, at: SheetPoint) => void
  /** Asked first whether a press takes hold of something. */
  readonly grab?: Grab
  /** Told when what was taken hold of is let go; false where the press was broken off. */
  readonly release?: (isMeant: boolean) => void
  /** Called with how many times larger than the whole sheet it is looked at, and how it lies, whenever that changes. */
  readonly zoom?: (times: number, camera: Camera) => void
}

export function createBoard(container: HTMLDivElement, events: BoardEvents): Board {
  // Every change is followed by one draw of its layer, asked for below.
  Konva.autoDrawEnabled = false
  const size = () => ({ width: container.clientWidth || 1, height: container.clientHeight || 1 })
  const stage = new Stage({ container, ...size(), listening: false })
  let shown: { readonly scene: Scene; readonly theme: Theme; readonly px: number } | null = null
  let camera: Camera | null = null

  /** Made with the first picture: few drawings ever have one. */
  let under: Layer | null = null
  const panes = layerNames.map((name) => {
    const pane = new Pane(name, (shape) =>
      shown === null ? [] : marksOf(shape, looks(shown.theme), shown.px),
    )
    stage.add(pane.layer)
    return pane
  })
  const drawAll = (): void => {
    for (const pane of panes) pane.drawAll()
    under?.batchDraw()
  }

  const look = (to: Camera): void => {
    if (to.scale === camera?.scale && to.x === camera.x && to.y === camera.y) return
    camera = to
    stage.scale({ x: to.scale, y: to.scale })
    stage.position({ x: to.x, y: to.y })
    drawAll()
    events.zoom?.(timesLarger(), to)
  }
  /** 1 while the whole sheet is in sight. */
  const timesLarger = (): number =>
    shown === null || camera === null ? 1 : camera.scale / fitting(shown.scene.frame, size()).scale
  const zoomBy = (factor: number, x = size().width / 2, y = size().height / 2): void => {
    if (shown !== null && camera !== null) look(zoomed(camera, factor, { x, y }, shown.scene.frame, size()))
  }
  const fit = (): void => {
    if (shown !== null) look(fitting(shown.scene.frame, size()))
  }

  const pan = (dx: number, dy: number): void => {
    if (shown !== null && camera !== null) look(panned(camera, dx, dy, shown.scene.frame, size()))
  }

  const onSheet = ({ x: left, y: top, scale }: Camera, x: number, y: number): SheetPoint => ({
    x: (x - left) / scale,
    y: (y - top) / scale,
  })
  const stopListening = listen(container, {
    tap(x, y) {
      if (shown === null || camera === null) return
      events.tap(aboutAt(shown.scene, onSheet(camera, x, y), reach / camera.scale), { x, y })
    },
    grab(x, y) {
      if (camera === null) return null
      const grip = events.grab?.(onSheet(camera, x, y), reach / camera.scale)
      if (!grip) return null
      return (toX, toY) => {
        if (camera !== null) grip(onSheet(camera, toX, toY))
      }
    },
    release: (isMeant) => events.release?.(isMeant),
    pan,
    zoom: zoomBy,
  })
  const resizing = new ResizeObserver(() => {
    stage.size(size())
    for (const layer of stage.getLayers()) layer.getCanvas().setPixelRatio(globalThis.devicePixelRatio)
    fit()
    drawAll()
  })
  resizing.observe(container)
  // Text that was drawn before its font had come is drawn again in it.
  document.fonts.addEventListener('loadingdone', drawAll)

  return {
    show(scene, theme, backdrop = null) {
      const sameSheet = shown !== null && sameFrame(shown.scene, scene)
      // Asking the page for a size in the middle of its changes lays it out twice.
      const px = shown !== null && sameSheet ? shown.px : scene.frame.width / size().width
      const redrawAll = shown === null || shown.theme !== theme || !sameSheet
      if (shown?.theme !== theme) container.style.backgroundColor = drawingColours[theme].paper
      shown = { scene, theme, px }
      for (const pane of panes) pane.show(scene.shapes, redrawAll)
      if (under === null && backdrop !== null) {
        under = new Layer({ listening: false })
        stage.add(under)
        under.moveToBottom()
      }
      if (under !== null) showBackdrop(under, panes[0]!.layer, backdrop, theme)
      if (!sameSheet) fit()
    },
    zoomIn: () => zoomBy(1.4),
    zoomOut: () => zoomBy(1 / 1.4),
    fit,
    pan(dx, dy) {
      if (timesLarger() === 1) return false
      pan(dx, dy)
      return true
    },
    destroy() {
      document.fonts.removeEventListener('loadingdone', drawAll)
      resizing.disconnect()
      stopListening()
      stage.destroy()
    },
  }
}

function sameFrame({ frame: one }: Scene, { frame: other }: Scene): boolean {
  return (
    one.left === other.left &&
    one.top === other.top &&
    one.width === other.width &&
    one.height === other.height
  )
}
