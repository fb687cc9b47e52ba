import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { audit } from '../../../core/audit/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import { draws, seed } from './seed.ts'

const specs = 500
const folder = join(import.meta.dirname, '../../../specs')
const texts = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => readFileSync(join(folder, name), 'utf8'))

const insteads = [
  '',
  '"',
  '{',
  ']',
  ',',
  '0',
  '-1',
  '1e999',
  'null',
  '[]',
  '"__proto__"',
  '"\\ud800"',
  '\0',
  '9'.repeat(400),
]

describe(`spoilt specs (seed ${seed})`, () => {
  it('are read, or refused with a sentence each; never a crash', { timeout: 120_000 }, () => {
    const by = draws()
    const found = { read: 0, refused: 0 }
    for (let spec = 0; spec < specs; spec += 1) {
      let text = by.oneOf(texts)
      for (let times = 1 + by.below(3); times > 0; times -= 1) {
        const at = by.below(text.length)
        text = text.slice(0, at) + by.oneOf(insteads) + text.slice(at + by.below(12))
      }
      const read = readSpec(text)
      const problems = read.ok ? audit(read.spec).map(({ problem }) => problem) : read.problems
      for (const problem of problems) expect(sentenceOf(problem).length, `spec ${spec}`).toBeGreaterThan(10)
      if (!read.ok) expect(problems.length, `spec ${spec}`).toBeGreaterThan(0)
      found[read.ok ? 'read' : 'refused'] += 1
    }
    expect(found.refused).toBeGreaterThan(100)
  })
})
