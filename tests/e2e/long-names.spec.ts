import type { Page } from '@playwright/test'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { currentStep } from '../../core/builds/index.ts'
import { test as bench, expect } from './bench.ts'
import { afterPulls, ask, seedBuild } from './seed.ts'
import { engineFile } from '../engine-files.ts'
import { en } from '../../core/words/index.ts'

/** As long as a name may be: of one word, and of many. */
const ofOneWord = 'Oberhalbsteinerschmalspurbahnhilfsbetriebskurbelgehausewerkstatt'.padEnd(80, 'n')
const ofManyWords = 'Old pump of the lower lock on the north canal, brought in after the long winter.'.slice(
  0,
  80,
)

/** An engine whose names leave no room. */
const test = bench.extend<{ longName: string }>({
  longName: [ofOneWord, { option: true }],
  specs: async ({ longName }, use) => {
    const folder = await mkdtemp(join(tmpdir(), 'bedplate-specs-'))
    const spec = JSON.parse(await readFile(engineFile('skerry-3'), 'utf8')) as Spec
    spec.name = longName
    for (const step of spec.steps) step.name = longName
    for (const procedure of spec.procedures) procedure.name = longName
    for (const group of spec.fastenerGroups) group.name = longName
    await writeFile(join(folder, 'skerry-3.json'), JSON.stringify(spec))
    await use(folder)
    await rm(folder, { recursive: true, force: true })
  },
})

type Named = { name: string }
interface Spec extends Named {
  readonly steps: readonly Named[]
  readonly procedures: readonly Named[]
  readonly fastenerGroups: readonly Named[]
}

/**
 * What reaches beyond the window's sides, and what is wider than its own box and seen to be so. A table that scrolls in its own
 * box may be wider than the box.
 */
function tooWide(page: Page) {
  return page.evaluate(() => {
    const name = (element: Element) =>
      `${element.tagName.toLowerCase()}.${element.className.toString()} “${(element.textContent ?? '').trim().slice(0, 40)}”`
    const wide = [...document.querySelectorAll<HTMLElement>('body *')].filter((element) => {
      if (!element.checkVisibility() || element.closest('svg, .unseen, canvas') !== null) return false
      const { overflowX, display } = getComputedStyle(element)
      if (overflowX !== 'visible' || display === 'inline') return false
      return element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0
    })
    const beyond =
      document.documentElement.scrollWidth > innerWidth
        ? [`page ${document.documentElement.scrollWidth}`]
        : []
    return [...beyond, ...wide.map(name)]
  })
}

for (const longName of [ofOneWord, ofManyWords])
  test.describe(`a name of 80 letters ${longName === ofOneWord ? 'in one word' : 'in many words'}`, () => {
    test.use({ longName })
    test('pushes nothing wide, wherever it stands', async ({ bench }) => {
      const { page } = bench
      const adapter = { id: 'a', name: longName, offset: '40 mm', angle: '0 °' }
      const wrench = {
        ...{ id: 'w', name: longName, range: { least: '2 N·m', most: '200 N·m' } },
        ...{ scale: { unit: 'N·m' as const, step: 0.5 }, made: { type: 'II' as const, class: 'A' } },
        ...{ length: '450 mm', adapters: [adapter], calibration: { on: '2026-03-31', cycles: 1 } },
      }
      await ask(page, 'wrenches.keep', { wrench })
      const person = { id: null, name: longName, role: 'mechanic' as const }
      await ask(page, 'people.keep', { ...person, by: null })
      await seedBuild(page, {
        ...{ engine: new RegExp(longName.slice(0, 20)), name: longName, serial: longName },
        ...{ person: longName, far: afterPulls(7) },
      })
      const sizes = [
        { width: 1024, height: 768 },
        { width: 683, height: 384 },
      ]
      const found: Record<string, readonly string[]> = {}
      const look = async (place: string) => {
        for (const size of sizes) {
          await page.setViewportSize(size)
          found[`${place} at ${size.width}`] = await tooWide(page)
        }
        await page.setViewportSize(sizes[0]!)
      }
      const press = (name: string | RegExp) => page.getByRole('button', { name }).first().click()
      await look('build window')
      await press(en.buildWindow.allSteps)
      await look('all steps')
      await press(en.buildWindow.allSteps)
      for (const page of [en.run.benchCard, en.run.clampMap, en.buildWindow.sheet]) {
        await press(page)
        await look(page.toLowerCase())
        await press(/←/)
      }
      await page.locator('button.who').click()
      await expect(page.getByRole('dialog')).toBeVisible()
      await look('who is at the bench')
      await page.keyboard.press('Escape')
      await press(en.buildWindow.allBuilds)
      await look('start page')
      for (const name of [
        ...[en.archive.title, en.engines.people, en.engines.record, en.engines.wrenches],
        en.practice.title,
      ]) {
        await press(name)
        await look(name)
        await page.getByRole('button', { name: /←/ }).first().click()
      }
      await seedBuild(page, {
        ...{ engine: new RegExp(longName.slice(0, 20)), name: longName, person: longName },
        far: (spec, state) => currentStep(spec, state)?.kind === 'choose-shells',
      })
      await look('shells')
      await press(en.shells.orderAndLabels)
      await look('order and labels')
      expect(found).toEqual(Object.fromEntries(Object.keys(found).map((place) => [place, []])))
    })
  })
