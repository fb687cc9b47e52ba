import type { Page } from '@playwright/test'
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

/** WCAG 2.2 AA, and what axe leaves off unless asked: the size of targets and the enhanced contrast. */
const usual: RunOptions = {
  rules: {
    'target-size': { enabled: true },
    'color-contrast': { enabled: false },
    'color-contrast-enhanced': { enabled: true },
  },
}

/** What differs between light and dark. */
export const contrastAlone: RunOptions = { runOnly: { type: 'rule', values: ['color-contrast-enhanced'] } }

/**
 * What axe finds against a page, a line for each rule that is broken. axe is put into the page once and stays there, and
 * looks at this page alone: there are no frames.
 */
export async function accessFaults(page: Page, options = usual): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) {
    await page.evaluate(axe.source)
    await page.evaluate(
      (check) => (window as unknown as { readonly axe: typeof axe }).axe.configure({ checks: [check] }),
      contrast,
    )
  }
  return page.evaluate(async (options) => {
    const inPage = (window as unknown as { readonly axe: typeof axe }).axe
    const { violations } = await inPage.run(document, { ...options, resultTypes: ['violations'] })
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`,
    )
  }, options)
}
