import type { Page } from '@playwright/test'

/** The browser's camera: none, or one that shows a canvas of this size; it counts how often it was asked for, and for what. */
export async function cameraOf(page: Page, size: { width: number; height: number } | null) {
  await page.evaluate((size) => {
    const asked: unknown[] = []
    Object.assign(window, { cameraAskedFor: asked })
    navigator.mediaDevices.getUserMedia = (wanted) => {
      asked.push(wanted)
      if (size === null) return Promise.reject(new DOMException('Permission denied', 'NotAllowedError'))
      const canvas = Object.assign(document.createElement('canvas'), size)
      const stream = canvas.captureStream(10)
      const context = canvas.getContext('2d')!
      setInterval(() => {
        context.fillStyle = `hsl(${Date.now() % 360} 60% 50%)`
        context.fillRect(0, 0, size.width, size.height)
      }, 50)
      return Promise.resolve(stream)
    }
  }, size)
}
