import { describe, expect, it } from 'vitest'
import { themeIn } from '../../../../electron/desktop/window/theme-in.ts'
import { folder, store } from '../../bench.ts'
import { asking } from '../../requests/asking.ts'

describe('the look that the bench chose', () => {
  it('is taken from the answers that say it, and from no other', async () => {
    const { answer } = asking(await store(folder()))
    expect(themeIn('preferences.read', await answer('preferences.read', {}))).toBe('as-the-system')
    expect(themeIn('preferences.keep', await answer('preferences.keep', { theme: 'dark' }))).toBe('dark')
    expect(themeIn('preferences.keep', await answer('preferences.keep', { theme: 'loud' }))).toBeNull()
    expect(themeIn('host.read', await answer('host.read', {}))).toBeNull()
  })
})
