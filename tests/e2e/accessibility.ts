import type { Page } from '@playwright/test'
import axe, { type RunOptions } from 'axe-core'

/** WCAG 2.2 AA, and what axe leaves off unless asked: the size of targets and the enhanced contrast. */
const usual: RunOptions = {
  rules: { 'target-size': { enabled: true }, 'color-contrast-enhanced': { enabled: true } },
}

/**
 * What axe finds against a page, a line for each rule that is broken. axe is put into the page once and stays there, and
 * looks at this page alone: there are no frames.
 */
export async function accessFaults(page: Page, options = usual): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source)
  return page.evaluate(async (options) => {
    const inPage = (window as unknown as { readonly axe: typeof axe }).axe
    const { violations } = await inPage.run(document, { ...options, resultTypes: ['violations'] })
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`,
    )
  }, options)
}
