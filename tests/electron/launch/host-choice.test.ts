import { describe, expect, it } from 'vitest'
import { hasDisplay } from '../../../electron/launch/display.ts'
import { hostChoice, type HostFacts } from '../../../electron/launch/host-choice.ts'

const bench: HostFacts = {
  options: { local: false, window: true },
  isRoot: false,
  hasDisplay: true,
  electron: '/app/electron',
  wasTried: false,
}

describe('the host', () => {
  it('is the desktop one where Electron is there', () => {
    expect(hostChoice(bench)).toEqual({ kind: 'desktop', binary: '/app/electron' })
  })

  it('waits for one attempt to fetch Electron where it is not', () => {
    expect(hostChoice({ ...bench, electron: undefined })).toEqual({ kind: 'fetch-electron' })
  })

  it('is the local one after that attempt, and says how to try again', () => {
    expect(hostChoice({ ...bench, electron: undefined, wasTried: true })).toEqual({
      kind: 'local',
      why: expect.stringContaining('npx install-electron') as string,
    })
  })

  it('is the desktop one when Electron was put there after a failed attempt', () => {
    expect(hostChoice({ ...bench, wasTried: true })).toMatchObject({ kind: 'desktop' })
  })

  it.each([
    ['--no-window', { options: { local: false, window: false } }, 'no window'],
    ['--local', { options: { local: true, window: true } }, '--local'],
    ['root', { isRoot: true }, 'sandbox'],
    ['no display', { hasDisplay: false }, 'display'],
  ] satisfies [string, Partial<HostFacts>, string][])(
    'is the local one for %s, without a look for Electron',
    (_, facts, why) => {
      const local = { kind: 'local', why: expect.stringContaining(why) as string }
      expect(hostChoice({ ...bench, ...facts })).toEqual(local)
      expect(hostChoice({ ...bench, ...facts, electron: undefined })).toEqual(local)
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
