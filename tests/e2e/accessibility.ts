import type { JSHandle, Page } from '@playwright/test'
import axe, { type RunOptions } from 'axe-core'

/**
 * The enhanced contrast (WCAG 2.2, 1.4.6: 7 to 1, large text 4.5 to 1) from the bottom up. axe's own options leave what is
 * below the ordinary contrast to the ordinary rule, which then has to measure every text once more.
 */
const contrast = {
  id: 'color-contrast-enhanced',
  options: {
    ignoreUnicode: true,
    ignoreLength: false,
    ignorePseudo: false,
    boldValue: 700,
    boldTextPt: 14,
    largeTextPt: 18,
    contrastRatio: { normal: { expected: 7 }, large: { expected: 4.5 } },
    pseudoSizeThreshold: 0.25,
    shadowOutlineEmMax: 0.1,
    textStrokeEmMin: 0.03,
  },
}

/** WCAG 2.2 AA, but for what has to be measured: the gallery shows each screen in both looks, and has it measured there. */
const unmeasured: RunOptions = { rules: { 'color-contrast': { enabled: false } } }

/** With what axe leaves off unless asked: the size of targets and the enhanced contrast. */
export const measuredToo: RunOptions = {
  rules: {
    'target-size': { enabled: true },
    'color-contrast': { enabled: false },
    'color-contrast-enhanced': { enabled: true },
  },
}

/** What differs between light and dark. */
const contrastAlone: RunOptions = { runOnly: { type: 'rule', values: ['color-contrast-enhanced'] } }

/**
 * What axe finds against a page, a line for each rule that is broken: in all of it, or in some elements. axe is put into the
 * page once and stays there, and looks at this page alone: there are no frames.
 */
export async function accessFaults(
  page: Page,
  options = unmeasured,
  within?: JSHandle<readonly Element[]>,
): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) {
    await page.evaluate(axe.source)
    await page.evaluate(
      (check) => (window as unknown as { readonly axe: typeof axe }).axe.configure({ checks: [check] }),
      contrast,
    )
  }
  return page.evaluate(
    async ({ options, within }) => {
      const inPage = (window as unknown as { readonly axe: typeof axe }).axe
      const context = within === undefined ? document : { include: [...within] }
      const { violations } = await inPage.run(context, { ...options, resultTypes: ['violations'] })
      return violations.map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`,
      )
    },
    { options, within },
  )
}

/**
 * What axe finds against the contrast of the texts on show that are unlike all it was asked about on this page before: in
 * colour, size, weight, or in the grounds that they stand on.
 */
export async function contrastFaultsOfNewTexts(page: Page): Promise<readonly string[]> {
  const texts = await page.evaluateHandle(textsUnlikeThoseBefore)
  const isAny = await texts.evaluate((all) => all.length > 0)
  return isAny ? accessFaults(page, contrastAlone, texts) : []
}

/** Runs in the page, which keeps the likenesses. */
function textsUnlikeThoseBefore(): readonly Element[] {
  const page = window as unknown as { textsBefore?: Set<string> }
  const before = (page.textsBefore ??= new Set())
  const grounds = new Map<Element | null, string>([[null, '']])
  const plain = '/rgba(0, 0, 0, 0) none 1'
  const texts: Element[] = []
  for (const element of document.querySelectorAll('*')) {
    const { color, fontSize, fontWeight, backgroundColor, backgroundImage, opacity, visibility } =
      getComputedStyle(element)
    const ground =
      `${grounds.get(element.parentElement)}/${backgroundColor} ${backgroundImage} ${opacity}`.replace(
        plain,
        '',
      )
    grounds.set(element, ground)
    const hasText = [...element.childNodes].some(
      (node) => node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim() !== '',
    )
    const isShown = visibility === 'visible' && element.getClientRects().length > 0
    const likeness = `${ground} ${color} ${fontSize} ${fontWeight}`
    if (!hasText || !isShown || before.has(likeness)) continue
    before.add(likeness)
    texts.push(element)
  }
  return texts
}
