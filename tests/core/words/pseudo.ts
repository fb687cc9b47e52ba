import { datesOf } from '../../../core/words/formats/index.ts'
import type { Words } from '../../../core/words/index.ts'

const accented: Readonly<Record<string, string>> = {
  ...{ a: 'å', c: 'ç', e: 'ē', i: 'ï', n: 'ñ', o: 'ö', s: 'š', t: 'ţ', u: 'ü', y: 'ý', z: 'ž' },
  ...{ A: 'Å', C: 'Ç', E: 'Ē', I: 'Ï', N: 'Ñ', O: 'Ö', S: 'Š', T: 'Ţ', U: 'Ü', Y: 'Ý', Z: 'Ž' },
}

/** Facts stand in a text as they are. Set apart by signs that nobody types, they are found in it again. */
const open = '\u{F0000}'
const close = '\u{F0001}'

/** `[Šţåŕţ ~~]`: a text as it could be in a language that is a third longer and has signs over its letters. */
export function pseudoText(text: string): string {
  if (!/\p{L}{2}/u.test(text)) return text
  const letters = [...text.replaceAll(/[\u{F0000}\u{F0001}]/gu, '')].length
  let depth = 0
  const changed = [...text].map((sign) => {
    if (sign === open) depth += 1
    else if (sign === close) depth -= 1
    return depth > 0 ? sign : (accented[sign] ?? sign)
  })
  const plain = changed.join('').replaceAll(/[\u{F0000}\u{F0001}]/gu, '')
  return `[${plain} ${padding(Math.max(1, Math.round(letters / 3) - 3))}]`
}

/** In words no longer than the longest of a language that is spoken. */
function padding(length: number): string {
  return '~'.repeat(length).replaceAll(/~{12}(?=~)/g, '~~~~~~~~~~~ ')
}

/** The words of a language that nobody speaks: what the window shows outside its brackets comes from no table. */
export function pseudo(words: Words): Words {
  const { amount, span } = words.amounts
  const amounts = { amount, span: (facts: Parameters<typeof span>[0]) => accentedIn(span(facts)) }
  return { ...(changed(words, []) as Words), amounts, dates }
}

/** Within a day a month is a figure: its name would stand outside all brackets. By itself it is a text as any other. */
const inFigures = datesOf('de', { day: '2-digit', month: '2-digit' })
const dates: Words['dates'] = { ...inFigures, month: (number) => pseudoText(inFigures.month(number)) }

/** Between its numbers a span has words: they get their accents, and no brackets. */
const accentedIn = (span: string) =>
  span.replace(/at most|(?<=\s)to(?=\s)/, (words) =>
    [...words].map((sign) => accented[sign] ?? sign).join(''),
  )

/** Tables whose texts are parts of longer ones, or no prose: numbers with their units, what is said aloud, names of files. */
const leftAsTheyAre = /^(amounts|spoken\.(amount|numbers))/

function changed(part: unknown, path: readonly string[]): unknown {
  if (leftAsTheyAre.test(path.join('.'))) return part
  if (typeof part === 'string') return pseudoText(part)
  if (Array.isArray(part)) return part.map((each: unknown) => changed(each, path))
  if (typeof part === 'function')
    return (...facts: unknown[]) => result(Reflect.apply(part, null, facts.map(marked)))
  if (part === null || typeof part !== 'object') return part
  return Object.fromEntries(Object.entries(part).map(([key, each]) => [key, changed(each, [...path, key])]))
}

function result(made: unknown): unknown {
  if (typeof made === 'string') return pseudoText(made)
  if (Array.isArray(made)) return made.map(result)
  if (made === null || typeof made !== 'object') return made
  return Object.fromEntries(Object.entries(made).map(([key, each]) => [key, result(each)]))
}

/** What people typed and numbers with units come as texts; enumerations too, which a table is asked with and stay as they are. */
function marked(fact: unknown): unknown {
  if (typeof fact === 'string' && /\s|\d|\p{Lu}/u.test(fact)) return `${open}${fact}${close}`
  if (Array.isArray(fact)) return fact.map(marked)
  if (fact === null || typeof fact !== 'object') return fact
  return Object.fromEntries(Object.entries(fact).map(([key, each]) => [key, marked(each)]))
}
