import type { Page } from '@playwright/test'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, atStep, openAt, type Far } from './seed.ts'

/** At 200 % zoom a window has half of its pixels each way: of 1920 × 1080, of 1366 × 768 and of 1024 × 768. */
const zoomed = [
  { width: 960, height: 540 },
  { width: 683, height: 384 },
  { width: 512, height: 384 },
]

/** From the top of the page down, with what each takes of it. */
function parts(page: Page) {
  return page.evaluate(() =>
    ['.strip', '.sheet', '.panel', '.confirm', '.bar'].map((name) => {
      const { left, right, top, bottom } = document
        .querySelector(`main.build > ${name}`)!
        .getBoundingClientRect()
      return { name, left, right, top: top + scrollY, bottom: bottom + scrollY }
    }),
  )
}

/** What can be pressed or typed in and reaches beyond the sides of the page, or has something else over its middle. */
function outOfReach(page: Page) {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main.build :is(button, input, select)')]
      .filter((control) => control.checkVisibility() && control.closest('.unseen') === null)
      .flatMap((control) => {
        control.scrollIntoView({ block: 'center' })
        const { left, right, top, width, height } = control.getBoundingClientRect()
        const over = document.elementFromPoint(left + width / 2, top + height / 2)
        const isFree = over !== null && (control.contains(over) || control.closest('label')?.contains(over))
        return left >= 0 && right <= innerWidth && isFree === true ? [] : [control.innerText || control.id]
      }),
  )
}

const moments: Readonly<Record<string, Far>> = {
  'marks are typed': atStep('Case marks'),
  'shells are chosen': atStep('Choose mains'),
  'a pass is pulled': afterPulls(7),
}

test('at 200 % zoom the panel is below the drawing and all of it can be used', async ({
  unopened: bench,
}) => {
  const { page } = bench
  for (const [moment, far] of Object.entries(moments))
    await test.step(`where ${moment}`, async () => {
      await openAt(bench, { engine: /Skerry 3/, name: 'Zoomed', person: 'R. Halloran', far })
      for (const size of zoomed) {
        await page.setViewportSize(size)
        await expect
          .poll(async () => (await parts(page))[1]!.right - (await parts(page))[1]!.left)
          .toBeGreaterThan(size.width * 0.9)
        const found = await parts(page)
        for (const [index, { name, left, right, top }] of found.entries()) {
          expect(top, `${name} at ${size.width}`).toBeGreaterThanOrEqual(found[index - 1]?.bottom ?? 0)
          expect(left, name).toBeGreaterThanOrEqual(0)
          expect(right, name).toBeLessThanOrEqual(size.width)
        }
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
          size.width,
        )
        // Nothing of the panel is hidden behind a bar of its own: the page alone scrolls.
        expect(
          await page.evaluate(() => {
            const { scrollHeight, clientHeight } = document.querySelector('.panel')!
            return scrollHeight - clientHeight
          }),
        ).toBeLessThanOrEqual(1)
        expect(await outOfReach(page)).toEqual([])
      }
      if (moment === 'a pass is pulled') await new Mechanic(page, 'pointer').confirm()
    })
})
