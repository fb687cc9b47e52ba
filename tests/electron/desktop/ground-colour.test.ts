import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { groundColour, grounds } from '../../../electron/desktop/ground-colour.ts'

describe('the ground of the window before its page is painted', () => {
  it('is the paper of the page, so that nothing flashes', () => {
    const css = readFileSync(join(import.meta.dirname, '../../../renderer/look/tokens.css'), 'utf8')
    const papers = [...css.matchAll(/--paper: (#[0-9a-f]{6});/g)].map(([, colour]) => colour)
    expect([grounds.light, grounds.dark]).toEqual(papers)
  })

  it('is what the bench chose, else what the system has', () => {
    expect(groundColour('dark', false)).toBe(grounds.dark)
    expect(groundColour('light', true)).toBe(grounds.light)
    expect(groundColour('as-the-system', true)).toBe(grounds.dark)
    expect(groundColour('as-the-system', false)).toBe(grounds.light)
  })
})
