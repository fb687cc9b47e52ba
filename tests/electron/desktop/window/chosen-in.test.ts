import { describe, expect, it } from 'vitest'
import { chosenIn } from '../../../../electron/desktop/window/chosen-in.ts'
import { folder, store } from '../../bench.ts'
import { asking } from '../../requests/asking.ts'

describe('the look that the bench chose', () => {
  it('is taken from the answers that say it, and from no other', async () => {
    const { answer } = asking(await store(folder()))
    expect(chosenIn('preferences.read', await answer('preferences.read', {}))).toEqual({
      theme: 'as-the-system',
      language: null,
    })
    expect(chosenIn('preferences.keep', await answer('preferences.keep', { theme: 'dark' }))).toEqual({
      theme: 'dark',
      language: null,
    })
    expect(chosenIn('preferences.keep', await answer('preferences.keep', { theme: 'loud' }))).toBeNull()
    expect(chosenIn('host.read', await answer('host.read', {}))).toBeNull()
  })
})
