import { describe, expect, it } from 'vitest'
import { en } from '../../../core/words/index.ts'
import { de } from '../../../core/words/de/index.ts'
import { es } from '../../../core/words/es/index.ts'
import { samplesOfEnglish, type Sample } from './samples.ts'

const samples = samplesOfEnglish()

/** What a language says of the same facts, beside the English. */
interface Said {
  readonly message: string
  readonly english: string
  readonly text: string
}

const at = (table: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>((part, name) => (part as Record<string, unknown>)[name], table)

/** A text, a rich one with its parts one after the other, or a list of texts. */
function flat(text: unknown): string {
  if (Array.isArray(text)) return text.map(flat).join('')
  if (typeof text === 'object' && text !== null) return Object.values(text).map(flat).join('')
  return String(text)
}

function saidIn(table: unknown): readonly Said[] {
  return samples.flatMap(({ path, calls }: Sample) => {
    const say = (of: unknown, facts: readonly unknown[] | null) => {
      const message = at(of, path)
      return flat(
        typeof message === 'function'
          ? (message as (...facts: unknown[]) => unknown)(...(facts ?? []))
          : message,
      )
    }
    return (calls ?? [null]).map((facts) => ({
      message: path.join('.'),
      english: say(en, facts),
      text: say(table, facts),
    }))
  })
}

/** The numbers in a text, with a point as their decimal mark. */
function numbersIn(text: string): readonly string[] {
  const found = text.match(/\d+(?:[.,]\d+)?/g) ?? []
  return [...new Set(found.map((number) => number.replace(',', '.')))].sort()
}

/** What a fact leaves that was not found. English has it where the types allow more than there is. */
const hole = /undefined|NaN|\[object/

/** English words that are none in German or Spanish. */
const englishWord =
  /(?<![\p{L}-])(the|of|and|is|with|it|are|this|that|which|when|from|been|has|have|its|does|there|what|by|for|be)(?![\p{L}-])/iu
/** Names and quotations that stay as they are. */
const quoted = /Shigley's Mechanical Engineering Design|The Bedplate developers|github\.com\S*/g

/** Said by a number where English has a word for it, or the other way round. */
const otherNumbers = new Set([
  'keys.does.turn',
  'keys.names.home',
  'phrases.nameInSpec',
  'plan.sheet.first',
  'pullInputs.values.prevailing',
])

/** What may be the same in every language: names, numbers with units, keys, signs, and words that are shared. */
const sameIn = new Set([
  'dates.month',
  'editor.fields.name',
  'editor.fields.revision',
  'library.columns.revision',
  'editor.fields.text',
  'editor.passes.valueExample',
  'archive.takeOut',
  'archive.forked.code',
  'instruments.name',
  'practice.ready.person',
  'rings.card.ring',
  'run.confirm.start',
  'run.problem',
  'run.pause',
  'shells.measuring.least',
  'shells.measuring.greatest',
  'wrenches.form.name',
  'wrenches.form.adapter',
  'archive.table.engineOf',
  'benchCard.demo',
  'benchCard.name',
  'buildWindow.demo',
  'clampMap.materials.metal',
  'desktop.saving.pdf',
  'engines.demo',
  'engines.program',
  'engines.sample.machinist',
  'engines.sample.mechanic',
  'editor.more.layers.material',
  'keys.names.escape',
  'keys.names.tab',
  'packaging.copyright',
  'people.pin',
  'practice.measure.hints.feelers',
  'practice.measure.hints.strip',
  'sheet.head.demo',
  'shop.join.example',
  'tray.label.build',
])
const ofWords = /\p{L}{3}/u

describe.each([
  ['de', de],
  ['es', es],
])('the words of %s', (_, table) => {
  const said = saidIn(table)

  it('are said with every fact that there can be', () => {
    expect(said.length).toBeGreaterThan(2000)
    const holes = said.filter(({ english, text }) => hole.test(text) && !hole.test(english))
    expect(holes).toEqual([])
  })

  it('have the same numbers and names in them as the English ones', () => {
    const differing = said.filter(
      ({ message, english, text }) =>
        numbersIn(english).join() !== numbersIn(text).join() && !otherNumbers.has(message),
    )
    expect(differing).toEqual([])
  })

  it('have no English left in them', () => {
    expect(said.filter(({ text }) => englishWord.test(text.replaceAll(quoted, '')))).toEqual([])
    const alike = said.filter(({ english, text }) => english === text && ofWords.test(text))
    expect(alike.map(({ message }) => message).filter((message) => !sameIn.has(message))).toEqual([])
  })
})
