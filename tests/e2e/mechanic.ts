import { expect } from '@playwright/test'
import type { Page } from '@playwright/test'
import { en, type Words } from '../../core/words/index.ts'
import { typeAsInstrument } from './instrument.ts'
import { readingFieldIn } from './named.ts'

/** A press sooner than 400 ms after the last one is taken for the same press bouncing. */
const pastBounceMs = 450
/** As an assertion waits. */
const longestMs = 20_000
/** From key to key by hand: what comes much faster is taken for a gauge that types. */
const byHandMs = 60

/** What one does at the bench, by pointer or by keys alone. Reading the screen is the same for both. */
export class Mechanic {
  readonly page: Page
  readonly by: 'pointer' | 'keys'
  /** Those of the window. */
  readonly words: Words

  constructor(page: Page, by: 'pointer' | 'keys', words: Words = en) {
    this.page = page
    this.by = by
    this.words = words
  }

  /** How many entries the record has, as the title block knows. */
  async entries(): Promise<number> {
    return Number(await this.page.locator('[data-entries]').getAttribute('data-entries'))
  }

  get main() {
    return this.page.locator('.confirm button')
  }

  async startBuild(engine: RegExp, name: string, person: string) {
    const row = this.page.getByRole('button', { name: engine })
    if (this.by === 'pointer') {
      await row.click()
      await this.page.getByLabel(this.words.engines.buildName).fill(name)
      await this.page.getByLabel(this.words.engines.person).fill(person)
      await this.page.getByRole('button', { name: this.words.engines.start }).click()
    } else {
      await expect(row).toBeVisible()
      await this.tabTo(row)
      await this.page.keyboard.press('Enter')
      await this.page.keyboard.type(name, { delay: byHandMs })
      await this.page.keyboard.press('Tab')
      await this.page.keyboard.press('Tab')
      await this.page.keyboard.type(person, { delay: byHandMs })
      await this.page.keyboard.press('Enter')
    }
    await expect(this.page.getByRole('region', { name: this.words.buildWindow.drawing })).toBeVisible()
  }

  /** Presses the main button, or Enter, and waits until what it said is in the record. */
  async confirm() {
    const before = await this.entries()
    if (this.by === 'pointer') await this.main.click() // which waits until it can be clicked
    else {
      await expect(this.main).toBeEnabled()
      await this.page.keyboard.press('Enter')
    }
    // A wait for an element is one call of the page; a poll of its attribute is one for each look.
    await this.page
      .locator(`[data-entries]:not([data-entries="${before}"])`)
      .waitFor({ state: 'attached', timeout: longestMs })
    await this.letBounceTimePass()
  }

  /** The page's clock jumps: a person takes longer between two bolts than a test should. */
  letBounceTimePass() {
    return this.page.clock.fastForward(pastBounceMs)
  }

  async noteMarks(typed: string) {
    const field = this.page.getByLabel(this.words.steps.marks.asStamped)
    if (this.by === 'pointer') await field.fill(typed)
    else {
      await expect(field).toBeFocused()
      await this.page.keyboard.type(typed, { delay: byHandMs })
    }
    await this.confirm()
  }

  async answerReading(typed: string) {
    const field = this.page.getByLabel(readingFieldIn(this.words))
    if (this.by === 'pointer') await field.fill(typed)
    else {
      await this.tabTo(field)
      await this.page.keyboard.type(typed, { delay: byHandMs })
    }
    await this.confirm()
  }

  /** A gauge or wrench that types: all at once, and an Enter unless it breaks off. */
  async gaugeSends(text: string, ending: 'enter' | 'broken off' = 'enter') {
    await typeAsInstrument(this.page, text, ending)
  }

  /** Goes on with whatever the step says is next until the panel shows another step. */
  async finishStep(name: string) {
    await expect(this.heading).toContainText(name)
    while ((await this.heading.innerText()).startsWith(name)) await this.confirm()
  }

  get panel() {
    return this.page.getByRole('region', { name: this.words.steps.frame.title })
  }

  get heading() {
    return this.panel.getByRole('heading', { level: 1 })
  }

  private async tabTo(target: ReturnType<Page['locator']>) {
    for (let presses = 0; presses < 60; presses++) {
      if (await target.evaluate((element) => element === document.activeElement)) return
      await this.page.keyboard.press('Tab')
    }
    throw new Error('the Tab key does not lead there')
  }
}
