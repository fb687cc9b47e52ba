import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { closingLines, partLines, readReport, type Ended } from './report.ts'

const folder = mkdtempSync(join(tmpdir(), 'report-'))
afterAll(() => rmSync(folder, { recursive: true }))

function reportOf(ended: readonly Ended[]): string {
  const file = join(folder, 'report.json')
  writeFileSync(file, JSON.stringify(ended))
  return file
}

const good: Ended = { name: 'a', outcome: 'passed' }
const bad: Ended = { name: 'b', outcome: 'failed' }
const shaky: Ended = { name: 'd', outcome: 'passed', twice: true }
const left: Ended = { name: 'c', outcome: 'skipped', reason: 'no Electron here' }

describe('the report of a test runner', () => {
  it('is what the runner says when it ends well, or badly for a failed test', () => {
    expect(readReport('unit tests', reportOf([good, left]), 0)).toEqual([good, left])
    expect(readReport('unit tests', reportOf([good, bad]), 1)).toEqual([good, bad])
  })

  it('is a failure when there is none', () => {
    expect(readReport('unit tests', join(folder, 'none.json'), 0)).toEqual([
      { name: 'unit tests crashed', outcome: 'failed' },
    ])
  })

  it('has a failure more when nothing ran, or all was skipped', () => {
    expect(readReport('unit tests', reportOf([left]), 0)).toEqual([
      left,
      { name: 'unit tests ran nothing', outcome: 'failed' },
    ])
  })

  it('has a failure more when the runner ended badly though every test passed', () => {
    expect(readReport('unit tests', reportOf([good]), 1)).toContainEqual({
      name: 'unit tests ended with 1',
      outcome: 'failed',
    })
    expect(readReport('unit tests', reportOf([good]), null)).toHaveLength(2)
  })
})

describe('the table of parts', () => {
  it('has each part with its time and what of it passed, and the whole, which is less than their sum', () => {
    const parts = [
      { name: 'lint', seconds: 41.26, ended: [good] },
      { name: 'unit tests', seconds: 101, ended: [good, bad, left] },
    ]
    expect(partLines(parts, 120.04)).toEqual([
      'lint          41.3 s  1 of 1',
      'unit tests   101.0 s  1 of 3',
      'all          120.0 s  2 of 4',
    ])
  })
})

describe('the closing lines', () => {
  it('are the count alone when all is well', () => {
    expect(closingLines([good, good])).toEqual(['2 passed, 0 failed'])
  })

  it('name what passed only when it was run again, and count it as passed', () => {
    expect(closingLines([good, shaky])).toEqual(['again    d: it failed at first', '2 passed, 0 failed'])
  })

  it('name what was skipped, with its reason, and what failed, before the count', () => {
    expect(closingLines([bad, good, left])).toEqual([
      'skipped  c: no Electron here',
      'failed   b',
      '1 passed, 1 failed, 1 skipped',
    ])
  })
})
