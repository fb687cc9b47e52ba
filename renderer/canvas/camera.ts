import type { Box } from '../../core/layout/index.ts'

/** How the sheet lies in its window: px = mm · scale + offset. */
export interface Camera {
  readonly scale: number
  readonly x: number
  readonly y: number
}

export interface Size {
  readonly width: number
  readonly height: number
}

/** The sheet can be looked at this many times larger than it fits. */
export const largestScale = 8

/** The whole frame in the middle of the window, as large as it fits. */
export function fitting(frame: Box, window: Size): Camera {
  const scale = Math.min(window.width / frame.width, window.height / frame.height)
  return {
    scale,
    x: window.width / 2 - (frame.left + frame.width / 2) * scale,
    y: window.height / 2 - (frame.top + frame.height / 2) * scale,
  }
}

/** Where in the window a box of the sheet lies, in px. */
export function inWindow({ scale, x, y }: Camera, { left, top, width, height }: Box): Box {
  return { left: left * scale + x, top: top * scale + y, width: width * scale, height: height * scale }
}

/** Nearer or further by a factor with one place of the window staying where it is; within 1 and `most`. */
export function zoomed(
  camera: Camera,
  factor: number,
  at: { readonly x: number; readonly y: number },
  frame: Box,
  window: Size,
): Camera {
  const least = fitting(frame, window).scale
  const scale = Math.min(Math.max(camera.scale * factor, least), least * largestScale)
  const by = scale / camera.scale
  return keptOnSheet(
    { scale, x: at.x - (at.x - camera.x) * by, y: at.y - (at.y - camera.y) * by },
    frame,
    window,
  )
}

export function panned(camera: Camera, dx: number, dy: number, frame: Box, window: Size): Camera {
  return keptOnSheet({ ...camera, x: camera.x + dx, y: camera.y + dy }, frame, window)
}

/** Never so far aside that the window shows anything but the sheet; a sheet that is smaller stays in the middle. */
function keptOnSheet(camera: Camera, frame: Box, window: Size): Camera {
  const { scale } = camera
  const along = (offset: number, from: number, length: number, room: number): number => {
    const first = -from * scale
    const last = room - (from + length) * scale
    return last > first ? (first + last) / 2 : Math.min(Math.max(offset, last), first)
  }
  return {
    scale,
    x: along(camera.x, frame.left, frame.width, window.width),
    y: along(camera.y, frame.top, frame.height, window.height),
  }
}
