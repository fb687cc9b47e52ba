import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openLog } from '../../../electron/requests/log.ts'
import { clock, folder } from '../bench.ts'

describe('the log', () => {
  it('has a line with its time for each line', () => {
    const inFolder = folder()
    const log = openLog(inFolder, clock('2026-03-02T07:30:00.000Z'))
    log('started')
    log('ended')
    expect(readFileSync(join(inFolder, 'log/bedplate.log'), 'utf8')).toBe(
      '2026-03-02T07:30:00.000Z started\n2026-03-02T07:30:01.000Z ended\n',
    )
  })

  it('does not say whose folder it is', () => {
    const inFolder = folder()
    openLog(inFolder, clock())(`at ${homedir()}/x.ts, ${inFolder}/bedplate.sqlite`)
    const text = readFileSync(join(inFolder, 'log/bedplate.log'), 'utf8')
    expect(text).toContain('at ~/x.ts, (data)/bedplate.sqlite')
  })

  it('stays short: three files of a quarter of a megabyte', () => {
    const inFolder = folder()
    const log = openLog(inFolder, clock())
    const line = 'x'.repeat(1000)
    for (let count = 0; count < 1200; count += 1) log(line)
    expect(readdirSync(join(inFolder, 'log')).sort()).toEqual([
      'bedplate.log',
      'bedplate.log.1',
      'bedplate.log.2',
    ])
    for (const name of readdirSync(join(inFolder, 'log')))
      expect(statSync(join(inFolder, 'log', name)).size).toBeLessThan(260 * 1024)
  })

  it('is done without where it cannot be written', () => {
    const inFolder = folder()
    writeFileSync(join(inFolder, 'log'), '')
    expect(() => openLog(inFolder, clock())('started')).not.toThrow()
  })
})
