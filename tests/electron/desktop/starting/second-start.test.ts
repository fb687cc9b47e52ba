import { mkdirSync, symlinkSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import {
  afterRefusedLock,
  isClosing,
  isLockHeld,
  markClosing,
  unmarkClosing,
} from '../../../../electron/desktop/starting/second-start.ts'
import { folder } from '../../bench.ts'

describe('a start that is refused the lock', () => {
  it('leaves it to the one that runs, which has come to the front', () => {
    expect(afterRefusedLock({ isClosing: false, isHeld: true, tries: 0 })).toBe('leave')
  })

  it('tries again while the other one is closing, and says so when that never ends', () => {
    expect(afterRefusedLock({ isClosing: true, isHeld: true, tries: 0 })).toBe('try-again')
    expect(afterRefusedLock({ isClosing: true, isHeld: true, tries: 119 })).toBe('try-again')
    expect(afterRefusedLock({ isClosing: true, isHeld: true, tries: 120 })).toBe('give-up')
  })

  it('goes on where nobody holds it: the disk knows no such locks, and the record’s own decides', () => {
    expect(afterRefusedLock({ isClosing: false, isHeld: false, tries: 0 })).toBe('go-on')
    expect(afterRefusedLock({ isClosing: true, isHeld: false, tries: 3 })).toBe('go-on')
  })
})

describe('what a start finds in the folder of the window', () => {
  it('is the mark of one that is closing, until the next one has the lock', () => {
    const window = folder()
    expect(isClosing(window)).toBe(false)
    markClosing(window)
    expect(isClosing(window)).toBe(true)
    unmarkClosing(window)
    expect(isClosing(window)).toBe(false)
    unmarkClosing(window)
  })

  it('is Chromium’s lock, a symbolic link that leads to no file', () => {
    const window = folder()
    expect(isLockHeld(window, 'linux')).toBe(false)
    symlinkSync('bench-4711', join(window, 'SingletonLock'))
    expect(isLockHeld(window, 'linux')).toBe(true)
  })

  it('is nothing to go by on Windows, where the lock is a file either way', () => {
    const window = folder()
    mkdirSync(join(window, 'empty'))
    expect(isLockHeld(window, 'win32')).toBe(true)
  })
})
