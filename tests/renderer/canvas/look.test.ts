import { describe, expect, it } from 'vitest'
import { contrast } from '../../../renderer/canvas/contrast.ts'
import { looks, type Theme } from '../../../renderer/canvas/look.ts'
import { drawingColours } from '../../../renderer/look/colours.ts'

const themes: readonly Theme[] = ['light', 'dark', 'print']

describe('contrast', () => {
  it('is 21 between black and white and 1 of a colour with itself (WCAG 2.2)', () => {
    expect(contrast('#000000', '#FFFFFF')).toBeCloseTo(21, 9)
    expect(contrast('#0072B2', '#0072B2')).toBe(1)
  })

  it('of the blue on white is 5.2 (second opinion: WebAIM contrast checker, remembered)', () => {
    expect(contrast('#0072B2', '#FFFFFF')).toBeCloseTo(5.19, 1)
  })
})

describe.each(themes)('the %s look', (theme) => {
  const palette = drawingColours[theme]
  const table = looks(theme)
  const grounds = [palette.paper, palette.metal, palette.hollow]

  it('has texts that can be read on every ground they stand on: 4.5 to 1, ink 7 to 1', () => {
    for (const ground of grounds) {
      for (const role of ['label', 'grade', 'waiting', 'next-value', 'note-text'] as const)
        expect(contrast(table[role].text ?? '', ground), `${role} on ${ground}`).toBeGreaterThanOrEqual(7)
      for (const role of ['quiet-label', 'warning-label'] as const)
        expect(contrast(table[role].text ?? '', ground), `${role} on ${ground}`).toBeGreaterThanOrEqual(4.5)
    }
  })

  it('has numbers that can be read in the discs they stand in', () => {
    expect(contrast(table.next.text!, table.next.fill!)).toBeGreaterThanOrEqual(4.5)
    expect(contrast(table.done.text!, table.done.fill!)).toBeGreaterThanOrEqual(7)
    expect(contrast(table['grade-fitted'].text!, table['plate-fitted'].fill!)).toBeGreaterThanOrEqual(7)
  })

  it('has lines and areas that stand out from every ground, 3 to 1; the drafting paper’s squares do not', () => {
    // The halo only widens the blue disc; ticks stand on their plates and discs; openings and landmarks mean nothing by
    // themselves; the ring of a seal is told by its two edges.
    const quiet = ['grid', 'next-halo', 'tick-fitted', 'tick-done', 'opening', 'landmark', 'face-part-fill']
    for (const [role, look] of Object.entries(table)) {
      if (quiet.includes(role)) continue
      // A line with a casing is told by its casing.
      const line = look.casing ?? look.stroke ?? look.fill
      if (line === undefined) continue
      for (const ground of grounds)
        expect(contrast(line, ground), `${role} on ${ground}`).toBeGreaterThanOrEqual(3)
    }
    expect(contrast(table['tick-fitted'].stroke!, table['plate-fitted'].fill!)).toBeGreaterThanOrEqual(3)
    if (table.grid.stroke !== undefined) expect(contrast(table.grid.stroke, palette.paper)).toBeLessThan(1.3)
  })

  it('uses the blue for what is to be done now and for nothing else', () => {
    const blue = Object.entries(table)
      .filter(([, look]) => Object.values(look).includes(palette.act))
      .map(([role]) => role)
    expect(blue.sort()).toEqual([
      'bead-start',
      'callout',
      'checked',
      'crosshair',
      'next',
      'next-half',
      'path',
      'path-head',
      'protractor-end',
      'protractor-end-knob',
      'protractor-swept',
    ])
  })
})
