import type { Page } from '@playwright/test'

/** How two pictures differ. Where one is larger than the other, what is outside the smaller one differs. */
export interface PictureDifference {
  readonly pixels: number
  readonly of: number
  /** The later picture, pale, with red where it differs; PNG. */
  readonly picture: Buffer
}

/** Compares two PNG files in a page of the browser, which can read them. A channel may be off by 8 of 255 and still be the same. */
export async function differenceOf(page: Page, before: Buffer, after: Buffer): Promise<PictureDifference> {
  const [earlier, later] = [before.toString('base64'), after.toString('base64')]
  const found = await page.evaluate(
    async ([earlier, later, allowed]) => {
      const load = async (base64: string) => {
        const image = new Image()
        image.src = `data:image/png;base64,${base64}`
        await image.decode()
        return image
      }
      const images = [await load(earlier), await load(later)] as const
      const width = Math.max(...images.map((image) => image.width))
      const height = Math.max(...images.map((image) => image.height))
      const draw = (image: HTMLImageElement) => {
        const context = new OffscreenCanvas(width, height).getContext('2d')!
        context.drawImage(image, 0, 0)
        return context.getImageData(0, 0, width, height)
      }
      const [one, other] = [draw(images[0]), draw(images[1])]
      let pixels = 0
      for (let at = 0; at < one.data.length; at += 4) {
        const isOff = [0, 1, 2, 3].some(
          (channel) => Math.abs(one.data[at + channel]! - other.data[at + channel]!) > allowed,
        )
        if (isOff) pixels++
        for (let channel = 0; channel < 3; channel++)
          other.data[at + channel] = isOff
            ? [230, 0, 60][channel]!
            : 255 - (255 - other.data[at + channel]!) / 4
        other.data[at + 3] = 255
      }
      const canvas = document.createElement('canvas')
      Object.assign(canvas, { width, height })
      canvas.getContext('2d')!.putImageData(other, 0, 0)
      return { pixels, of: width * height, url: canvas.toDataURL('image/png') }
    },
    [earlier, later, 8] as const,
  )
  const { pixels, of, url } = found
  return { pixels, of, picture: Buffer.from(url.slice(url.indexOf(',') + 1), 'base64') }
}
