import type { Page } from '@playwright/test'
import { en } from '../../core/words/index.ts'

/** Chooses a day, in ISO 8601, by its parts. */
export async function chooseDay(page: Page, label: string, iso: string): Promise<void> {
  const field = page.getByRole('group', { name: label, exact: true })
  const [year, month, day] = iso.split('-') as [string, string, string]
  await field.getByLabel(en.parts.day.year).selectOption(year)
  await field.getByLabel(en.parts.day.month).selectOption(month)
  await field.getByLabel(en.parts.day.day).selectOption(day)
}
