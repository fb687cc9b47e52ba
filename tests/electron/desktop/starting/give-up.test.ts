import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { problem } from '../../../../core/problem/index.ts'

const played = vi.hoisted(() => ({ order: [] as string[] }))
vi.mock('electron', () => ({
  app: { exit: (code: number) => played.order.push(`exit ${code}`) },
  dialog: { showErrorBox: (title: string, text: string) => played.order.push(`${title}: ${text}`) },
}))
const { giveUp, giveUpOnFault } = await import('../../../../electron/desktop/starting/give-up.ts')

let folder: string
let lines: string[]
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'give-up-'))
  lines = []
  played.order.length = 0
  vi.stubEnv('BEDPLATE_SIGN', join(folder, 'sign'))
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(() => {
  vi.unstubAllEnvs()
  vi.restoreAllMocks()
  rmSync(folder, { recursive: true })
})

const ending = 'A Bedplate on /data is still ending. Wait until it has, then start again.'
const signLeft = () => readFileSync(join(folder, 'sign'), 'utf8')

describe('a start that cannot be', () => {
  it('is said to the log, to the launcher and to the person, and ends with 1', () => {
    giveUp(problem('still-ending', { folder: '/data' }), (line) => lines.push(line))
    expect(lines).toEqual([`gave up: ${ending}`])
    expect(signLeft()).toBe('refused: {"code":"still-ending","facts":{"folder":"/data"},"path":""}')
    expect(played.order).toEqual([`Bedplate: ${ending}`, 'exit 1'])
  })

  it('has its trace in the log alone where it is a mistake of the program', () => {
    giveUpOnFault(new TypeError('x is not a function'), (line) => lines.push(line))
    expect(lines[0]).toMatch(/^fault in main: TypeError: x is not a function\n {4}at /)
    expect(JSON.parse(signLeft().replace('refused: ', ''))).toEqual(problem('own-fault', {}))
    expect(played.order.join()).toContain('Bedplate made a mistake of its own and ends.')
    expect(played.order.join()).not.toContain('TypeError')
    giveUpOnFault('a string', (line) => lines.push(line))
    expect(lines.at(-2)).toBe('fault in main: a string')
  })
})
