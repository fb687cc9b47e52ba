import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { en } from '../../../core/words/index.ts'
import { textsOfSpecs } from '../../texts-of-specs.ts'

const tests = join(import.meta.dirname, '../../e2e')

/** A text that a test looks for: in `getByText('…')`, `getByRole('button', { name: '…' })`, `toContainText(/…/)` and their like. */
const lookedFor =
  /(?:getBy(?:Text|Label|Title|Placeholder|AltText)\(|to(?:HaveText|ContainText|HaveAccessibleName|HaveAccessibleDescription|HaveTitle)\(|getByRole\([^()]*\bname:|\bhasText:)\s*(['"`/])((?:\\.|(?!\1).)+)\1/g

/** All texts of the table; of a message with facts, what stands in its source. */
function textsOf(part: unknown): readonly string[] {
  if (typeof part === 'string') return [part]
  if (typeof part === 'function') return [String(part)]
  return part === null || typeof part !== 'object' ? [] : Object.values(part).flatMap(textsOf)
}

const texts = textsOf(en)
const whole = new Set(texts)
const all = texts.join('\n')

/** Whether a wording of the table is written again: a whole text of it, or three words of one that follow each other. */
function isWording(found: string): boolean {
  const text = found.replaceAll(/\$\{.*\}|^\^|\$$|\\/g, '')
  if (!/\p{L}{2}/u.test(text) || ofEngines.has(text)) return false
  const words = text.split(' ')
  if (whole.has(words.join(' '))) return true
  return words.some((_, at) => at + 3 <= words.length && all.includes(words.slice(at, at + 3).join(' ')))
}

/** What the specs of the engines say, which tests are about. */
const ofEngines = await textsOfSpecs()

const left = readdirSync(tests)
  .filter((name) => name.endsWith('.ts'))
  .flatMap((name) =>
    [...readFileSync(join(tests, name), 'utf8').matchAll(lookedFor)].map(([, , found]) => ({
      name,
      found: found!,
    })),
  )

describe('what end-to-end tests look for', () => {
  it('is read from the table of texts, so that another wording breaks none of them', () => {
    expect(left.length).toBeGreaterThan(50)
    expect(
      left.filter(({ found }) => isWording(found)).map(({ name, found }) => `${name}: ${found}`),
    ).toEqual([])
  })

  it('is known for a wording by a whole text, or by three words of one', () => {
    expect(isWording(en.steps.frame.title)).toBe(true)
    expect(isWording('All 10 are in the order')).toBe(true)
    expect(isWording('R. Halloran')).toBe(false)
  })
})
