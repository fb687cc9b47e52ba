import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { textWidth } from '../../../../core/layout/index.ts'
import { fontWidths } from '../../../font-widths.ts'
import { textsOfSpecs } from '../../../texts-of-specs.ts'

describe('the estimated width of a text', () => {
  // Measured in Chromium with the font itself, at a size whose capitals are 67.2 px high; within 1 %.
  it.each([
    ['24 N·m', 'bold', 340],
    ['NOSE', 'bold', 267],
    ['M3', 'bold', 146],
    ['38 µm', 'regular', 289],
    ['bore 2', 'regular', 282],
  ] as const)('of “%s” in %s is %d px for capitals of 67.2 px', (text, weight, px) => {
    expect(Math.abs(textWidth(text, 67.2, weight) / px - 1)).toBeLessThan(0.01)
  })

  it('grows with the capitals', () => {
    expect(textWidth('R', 20, 'bold')).toBeCloseTo(2 * textWidth('R', 10, 'bold'), 9)
  })

  it('takes a character it does not know to be a wide one, so that no room is too small', () => {
    expect(textWidth('Ж', 10, 'regular')).toBeGreaterThan(textWidth('M', 10, 'regular'))
    expect(textWidth('', 10, 'regular')).toBe(0)
  })

  it('is as wide with a no-break space as with a plain one', () => {
    expect(textWidth('24\u00a0N·m', 10, 'bold')).toBe(textWidth('24 N·m', 10, 'bold'))
  })
})

describe.each(['regular', 'bold'] as const)('the widths of %s characters', (weight) => {
  const fromFont = fontWidths(weight)
  /** In thousandths of the font size. */
  const widthOf = (character: string) => Math.round(textWidth(character, 672, weight))
  let used: ReadonlySet<string>

  beforeAll(async () => {
    const texts = [...sourcesOf('core/words'), ...(await textsOfSpecs())]
    used = new Set(
      texts.flatMap((text) => [...text]).filter((character) => /[\p{L}\p{N}\p{P}\p{S}]/u.test(character)),
    )
  })

  it('are those of the font, of every character that the tables of words and the demo engines use', () => {
    const wrong = [...used, ...'äöüßÄÖÜñáéíóúÁÉÍÓÚ¿¡«»„“°µ×−…']
      .filter((character) => fromFont.has(character))
      .map((character) => [character, widthOf(character), fromFont.get(character)!] as const)
      .filter(([, is, should]) => is !== should)
    expect(wrong).toEqual([])
  })

  it('are only guessed of signs that the font does not have, and of no letter but those of formulas', () => {
    const guessed = [...used].filter((character) => !fromFont.has(character))
    expect(guessed.filter((character) => /\p{L}/u.test(character) && !/[Δδθπ]/.test(character))).toEqual([])
    for (const sign of guessed) expect(widthOf(sign)).toBe(900)
  })
})

/** The texts of a folder's modules, with whatever stands around them. */
function sourcesOf(folder: string): readonly string[] {
  const root = join(import.meta.dirname, '../../../..')
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => readFileSync(join(root, folder, file), 'utf8'))
}
