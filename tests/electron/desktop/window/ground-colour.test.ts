import { describe, expect, it } from 'vitest'
import { groundColour, grounds } from '../../../../electron/desktop/window/ground-colour.ts'
import { windowColours } from '../../../../renderer/look/colours.ts'

describe('the ground of the window before its page is painted', () => {
  it('is the paper of the page, so that nothing flashes', () => {
    const { light, dark } = windowColours
    expect(grounds).toEqual({ light: light.paper, dark: dark.paper })
  })

  it('is what the bench chose, else what the system has', () => {
    expect(groundColour('dark', false)).toBe(grounds.dark)
    expect(groundColour('light', true)).toBe(grounds.light)
    expect(groundColour('as-the-system', true)).toBe(grounds.dark)
    expect(groundColour('as-the-system', false)).toBe(grounds.light)
  })
})
