import type { Page } from '@playwright/test'

/**
 * What an instrument or a badge reader types: all at once, and an Enter unless it breaks off. The page's clock stands
 * still meanwhile, so that a slow machine tears nothing apart.
 */
export async function typeAsInstrument(
  page: Page,
  text: string,
  ending: 'enter' | 'broken off' = 'enter',
): Promise<void> {
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 1000)
  await page.keyboard.type(text)
  if (ending === 'enter') await page.keyboard.press('Enter')
  else await page.clock.fastForward(1000)
  await page.clock.resume()
}
