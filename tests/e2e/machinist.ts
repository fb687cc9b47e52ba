import { expect } from '@playwright/test'
import { en } from '../../core/words/index.ts'
import type { Bench } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { named } from './named.ts'
import { atStep, openAt } from './seed.ts'

/** What one does while shells are chosen: at the gauge, at the tray, at one bearing. */
export class Machinist extends Mechanic {
  readonly #bench: Bench

  constructor(bench: Bench) {
    super(bench.page, 'pointer')
    this.#bench = bench
  }

  /** Opens the bench with the split-case three, its case and crank marked as given, at a step; else at the choice of its main shells. */
  async atTheMains(housing: string, journal: string, step = 'Choose mains') {
    await openAt(this.#bench, {
      engine: /Skerry 3/,
      name: 'Shells',
      person: 'R. Halloran',
      marks: [housing, journal, '4 5 4', 'L M L'],
      far: atStep(step),
    })
    await expect(this.heading).toContainText(step)
  }

  row(position: string) {
    return this.panel.getByRole('button', { name: new RegExp(`^${position} `) })
  }

  async openRow(position: string) {
    const row = this.row(position)
    if ((await row.getAttribute('aria-expanded')) === 'false') await row.click()
  }

  /** Types one size into every cell of a part's grid and notes it. */
  async measure(position: string, part: 'housing' | 'journal', typed: string) {
    await this.openRow(position)
    await this.panel.getByRole('button', { name: en.shells.measure({ position }) }).click()
    await this.panel.getByRole('button', { name: en.shells.measuring.parts[part] }).click()
    for (const cell of await this.cells().all()) await cell.fill(typed)
    await this.confirm()
    await this.backToShells()
  }

  cells() {
    return this.panel.getByRole('textbox', {
      name: named((any) => en.shells.measuring.cell({ plane: any, direction: any })),
    })
  }

  async backToShells() {
    await this.page.getByRole('button', { name: en.shells.tray.back }).click()
  }

  async giveReason(field: RegExp, reason: string, action: RegExp) {
    const before = await this.entries()
    await this.panel.getByLabel(field).fill(reason)
    await expect(this.main).toHaveAccessibleName(action)
    await this.main.click()
    await expect.poll(() => this.entries()).toBeGreaterThan(before)
    await this.letBounceTimePass()
  }

  /** Counts shells of the compartments that are named; all others stay empty. */
  async countTray(counts: Readonly<Record<string, string>>) {
    await this.page
      .getByRole('button', { name: new RegExp(`${en.shells.countTray}|${en.shells.countTrayAgain}`) })
      .click()
    await this.panel.getByRole('button', { name: en.shells.tray.halves.alike }).click()
    for (const [label, count] of Object.entries(counts))
      await this.panel.getByLabel(en.shells.tray.shellsOf({ label }), { exact: true }).fill(count)
    await this.confirm()
  }
}
