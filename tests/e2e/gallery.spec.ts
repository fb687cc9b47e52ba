import { readFile, readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import { sampleBackups, sampleWrenches } from '../../renderer/gallery/sample-record.ts'
import { accessFaults } from './accessibility.ts'
import { addressesOnStage, showOnStage, withGallery } from '../gallery.ts'

/**
 * What the window asks of everything in it beyond WCAG 2.2 AA, by look: sizes do not change with colours. Drawings have
 * their own tests of colour and size.
 */
const rules = { light: ['target-size', 'color-contrast-enhanced'], dark: ['color-contrast-enhanced'] }

test('every entry of the gallery is drawn without a fault', async ({ page }) => {
  test.setTimeout(300_000)
  const faults: string[] = []
  const note = (fault: string) => faults.push(`${new URL(page.url()).hash}: ${fault}`)
  page.on('console', (message) => message.type() === 'error' && note(message.text()))
  page.on('pageerror', (error) => note(error.message))
  await page.setViewportSize({ width: 1366, height: 768 })

  await withGallery(async (address) => {
    const addresses = await addressesOnStage(page, address)
    expect(addresses.length).toBeGreaterThan(80)
    for (const light of addresses) {
      const isDrawing = light.includes('drawings-of')
      for (const look of isDrawing ? (['light'] as const) : (['light', 'dark'] as const)) {
        const shown = light.replace('look=light', `look=${look}`)
        await showOnStage(page, shown)
        if (!isDrawing)
          (await accessFaults(page, { runOnly: { type: 'rule', values: rules[look] } })).forEach(note)
      }
    }
  })
  expect(faults).toEqual([])
})

test('nothing of the gallery is in what is shipped', async () => {
  const files = await readdir('dist/renderer', { recursive: true, withFileTypes: true })
  const texts = await Promise.all(
    files
      .filter((file) => /\.(html|js)$/.test(file.name))
      .map((file) => readFile(join(file.parentPath, file.name), 'utf8')),
  )
  expect(texts.length).toBeGreaterThan(1)
  const ofGallery = [
    ...sampleWrenches.map(({ name }) => name),
    ...sampleBackups.backups.map(({ name }) => name),
  ]
  for (const word of ofGallery) expect(texts.filter((text) => text.includes(word))).toEqual([])
})
