import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const start = join(import.meta.dirname, '../../../electron/launch/start.mjs')

function runWith(...words: readonly string[]) {
  return spawnSync(process.execPath, [start, ...words], { encoding: 'utf8' })
}

describe('npm start', () => {
  it('explains its options and starts nothing', () => {
    const { status, stdout, stderr } = runWith('--help')
    expect(status).toBe(0)
    expect(stdout).toContain('--data DIR')
    expect(stderr).toBe('')
  })

  it('ends with 2 and a sentence when an option is unknown', () => {
    const { status, stdout, stderr } = runWith('--loud')
    expect(status).toBe(2)
    expect(stdout).toBe('')
    expect(stderr).toContain('“--loud” is not an option of Bedplate.')
  })
})
