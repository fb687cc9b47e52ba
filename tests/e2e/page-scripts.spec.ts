import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'

const built = join(import.meta.dirname, '../../dist/renderer')
const kilobytes = (file: string) => statSync(join(built, file)).size / 1000

test('the first page loads at most 490 kB of script, a quarter of it the texts of the whole window, and no script is over 500 kB', () => {
  const page = readFileSync(join(built, 'index.html'), 'utf8')
  const first = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(([, file = '']) => file)
  expect(first.length).toBeGreaterThan(1)
  expect(first.map(kilobytes).reduce((sum, each) => sum + each)).toBeLessThanOrEqual(490)
  const all = readdirSync(join(built, 'assets')).filter((name) => name.endsWith('.js'))
  for (const name of all) expect(kilobytes(`assets/${name}`), name).toBeLessThanOrEqual(500)
})
