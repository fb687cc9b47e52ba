import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { laws } from './laws.ts'

const folder = join(import.meta.dirname, 'laws')
const tests = readdirSync(folder)
  .filter((name) => name.endsWith('.spec.ts'))
  .map((name) => readFileSync(join(folder, name), 'utf8'))
  .join('\n')

describe('the table of Electron’s laws', () => {
  it.each(Object.keys(laws))('has a test for %s', (name) => {
    expect(tests.split(`testLaw('${name}'`)).toHaveLength(2)
  })
})
