import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { appAddress } from '../../../electron/launch/window.ts'

describe('the address of the app window', () => {
  // Chromium 156 on a screen of 1366 × 768, left at 1000 × 600: with dots it came back at 1050 × 748, without at 1000 × 600.
  it('has no dot, so that the browser finds the place of the window again', () => {
    expect(appAddress('/home/ada/.local/share/bedplate/open.html')).toBe(
      'file:///home/ada/%2Elocal/share/bedplate/open%2Ehtml',
    )
  })

  it.each(['/home/ada/.local/share/bedplate/open.html', '/srv/Motoren № 2/%2E/open.html'])(
    'leads to the same file: %s',
    (file) => {
      expect(fileURLToPath(appAddress(file))).toBe(file)
    },
  )
})
