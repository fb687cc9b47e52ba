import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'

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

const signLeft = () => readFileSync(join(folder, 'sign'), 'utf8')

describe('a start that cannot be', () => {
  it('is said to the log, to the launcher and to the person, and ends with 1', () => {
    giveUp('The disk is full.', (line) => lines.push(line))
    expect(lines).toEqual(['gave up: The disk is full.'])
    expect(signLeft()).toBe('refused: The disk is full.')
    expect(played.order).toEqual(['Bedplate: The disk is full.', 'exit 1'])
  })

  it('has its trace in the log alone where it is a mistake of the program', () => {
    giveUpOnFault(new TypeError('x is not a function'), (line) => lines.push(line))
    expect(lines[0]).toMatch(/^fault in main: TypeError: x is not a function\n {4}at /)
    expect(signLeft()).toContain(
      'Bedplate made a mistake of its own and ends. What was confirmed is on disk.',
    )
    expect(played.order.join()).not.toContain('TypeError')
    giveUpOnFault('a string', (line) => lines.push(line))
    expect(lines.at(-2)).toBe('fault in main: a string')
  })
})
