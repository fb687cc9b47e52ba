import { describe, expect, it } from 'vitest'
import { textIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { hasDisplay } from '../../../electron/launch/display.ts'
import { hostChoice, type HostChoice, type HostFacts } from '../../../electron/launch/host-choice.ts'

const bench: HostFacts = {
  options: { local: false, window: true, fetchElectron: false },
  isRoot: false,
  hasDisplay: true,
  electron: { kind: 'there', binary: '/app/electron' },
  noSandbox: undefined,
  lastFailure: undefined,
}

const absent = { kind: 'absent' } as const

const textOf = (choice: HostChoice) => choice.kind === 'local' && textIn(en, en.phrases, choice.why)

describe('the host', () => {
  it('is the desktop one where Electron is there', () => {
    expect(hostChoice(bench)).toEqual({ kind: 'desktop', binary: '/app/electron' })
  })

  it('waits for one attempt to fetch Electron where it is not', () => {
    expect(hostChoice({ ...bench, electron: absent })).toEqual({ kind: 'fetch-electron' })
  })

  it('is the local one after that attempt, and says why it failed and how to try again', () => {
    const why = { code: 'serverAnswered', facts: { host: 'github.com', status: 403 } } as const
    const facts = { ...bench, electron: absent, lastFailure: why }
    expect(textOf(hostChoice(facts))).toBe(
      'Electron could not be fetched (github.com answered 403); `npm start -- --fetch-electron` tries again',
    )
    expect(hostChoice({ ...facts, options: { ...bench.options, fetchElectron: true } })).toEqual({
      kind: 'fetch-electron',
    })
  })

  it('is the desktop one when Electron was put there after a failed attempt', () => {
    expect(
      hostChoice({ ...bench, lastFailure: { code: 'nothingArrived', facts: { seconds: 20 } } }),
    ).toMatchObject({ kind: 'desktop' })
  })

  it('is the local one where BEDPLATE_ELECTRON names something else', () => {
    const why = { code: 'electronNamedNoProgram', facts: { named: '/tmp' } } as const
    expect(hostChoice({ ...bench, electron: { kind: 'unfit', why } })).toEqual({ kind: 'local', why })
  })

  it.each([
    ['--no-window', { options: { ...bench.options, window: false } }, 'no window'],
    ['--local', { options: { ...bench.options, local: true } }, '--local'],
    ['root', { isRoot: true }, 'sandbox'],
    ['no display', { hasDisplay: false }, 'display'],
    ['no sandbox', { noSandbox: { code: 'noNamespaces', facts: {} } }, 'namespaces'],
  ] satisfies [string, Partial<HostFacts>, string][])(
    'is the local one for %s, and nothing is fetched for nothing',
    (_, facts, why) => {
      expect(textOf(hostChoice({ ...bench, ...facts }))).toContain(why)
      expect(textOf(hostChoice({ ...bench, ...facts, electron: absent }))).toContain(why)
    },
  )
})

describe('a display', () => {
  it('is named by one of two variables on Linux', () => {
    expect(hasDisplay('linux', {})).toBe(false)
    expect(hasDisplay('linux', { DISPLAY: '' })).toBe(false)
    expect(hasDisplay('linux', { DISPLAY: ':0' })).toBe(true)
    expect(hasDisplay('linux', { WAYLAND_DISPLAY: 'wayland-0' })).toBe(true)
  })

  it('is always there elsewhere', () => {
    expect(hasDisplay('darwin', {})).toBe(true)
    expect(hasDisplay('win32', {})).toBe(true)
  })
})
