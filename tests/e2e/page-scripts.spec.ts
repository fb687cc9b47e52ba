import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import { languages } from '../../core/words/index.ts'

const built = join(import.meta.dirname, '../../dist/renderer')
const kilobytes = (file: string) => statSync(join(built, file)).size / 1000

test('the first page loads at most 360 kB of script beside the texts of one language, and no script is over 500 kB', () => {
  const page = readFileSync(join(built, 'index.html'), 'utf8')
  const first = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(([, file = '']) => file)
  expect(first.length).toBeGreaterThan(1)
  expect(first.map(kilobytes).reduce((sum, each) => sum + each)).toBeLessThanOrEqual(360)
  const all = readdirSync(join(built, 'assets')).filter((name) => name.endsWith('.js'))
  const isOfLanguage = new RegExp(`^(${languages.join('|')})-`)
  const ofLanguages = all.filter((name) => isOfLanguage.test(name))
  expect(ofLanguages).toHaveLength(languages.length)
  for (const name of ofLanguages) {
    expect(first).not.toContain(`assets/${name}`)
    expect(kilobytes(`assets/${name}`), name).toBeLessThanOrEqual(300)
  }
  for (const name of all) expect(kilobytes(`assets/${name}`), name).toBeLessThanOrEqual(500)
})
