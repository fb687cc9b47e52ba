import { describe, expect, it } from 'vitest'
import { readPerson } from '../../../core/builds/index.ts'
import { isReadableName, nameKey } from '../../../core/person/index.ts'
import { isolated, sentenceIn } from '../../../core/problem/index.ts'
import { loadWords } from '../../../core/words/index.ts'

describe('two names', () => {
  it.each([
    ['in small letters', 'ana ruiz'],
    ['in capitals', 'ANA RUIZ'],
    ['with a no-break space', 'Ana\u00A0Ruiz'],
    ['with two blanks', ' Ana  Ruiz '],
    ['with a zero-width space', 'Ana\u200B Ruiz'],
    ['with a soft hyphen', 'A\u00ADna Ruiz'],
    ['with a variation selector', 'Ana\uFE0F Ruiz'],
    ['with a Cyrillic А', '\u0410na Ruiz'],
    ['with a Cyrillic а', 'An\u0430 Ruiz'],
    ['with a Greek Α', '\u0391na Ruiz'],
    ['in full-width letters', 'Ａｎａ　Ｒｕｉｚ'],
    ['in mathematical letters', '𝐀𝐧𝐚 𝐑𝐮𝐢𝐳'],
    ['with a 1 for the i', 'Ana Ru1z'],
    ['with an l for the i', 'Ana Rulz'],
    ['with a dotless ı', 'Ana Ruız'],
  ])('that look alike are the same: %s', (_, other) => {
    expect(nameKey(other)).toBe(nameKey('Ana Ruiz'))
  })

  it.each([
    ['Ana Ruiz', 'Ana Ruis'],
    ['Bo Lind', 'Bo Lindh'],
    ['Ana Ruiz', 'Anna Ruiz'],
    ['Ana Ruiz', 'AnaRuiz'],
    ['José', 'Jose'],
    ['王芳', '王方'],
    ['Иван', 'Ивана'],
  ])('that can be told apart are not: %s and %s', (one, other) => {
    expect(nameKey(one)).not.toBe(nameKey(other))
  })
})

describe('a name that is typed', () => {
  it.each([
    'Ana Ruiz',
    "O'Hara",
    'Jürgen Müller-Lüdenscheidt',
    '王芳',
    'יוסי',
    'نازنین\u200Cزهرا',
    '7',
    'Bo 🔧',
  ])('may be %s', (name) => {
    expect(readPerson(name)).toEqual({ ok: true, value: name })
  })

  it.each([
    ['a NUL', 'Ana\0Ruiz'],
    ['an escape sign', 'Ana\u001B[2JRuiz'],
    ['a line break', 'Ana\nRuiz'],
    ['a line separator', 'Ana\u2028Ruiz'],
    ['an override of direction', 'Ana\u202EzuiR'],
    ['an isolate that is never closed', 'Ana\u2067Ruiz'],
  ])('has no %s in it', (_, name) => {
    expect(readPerson(name)).toMatchObject({ ok: false, problem: { code: 'name-unreadable' } })
  })

  it.each([
    ['en', 'one for the direction of writing'],
    ['de', 'Zeichen für die Schreibrichtung'],
    ['es', 'de dirección de la escritura'],
  ] as const)('is refused in %s with what may be in it', async (language, what) => {
    const read = readPerson('Ana\u202EzuiR')
    if (read.ok) throw new Error('it is read')
    expect(sentenceIn(await loadWords(language), read.problem)).toContain(what)
  })

  it.each(['\u200B', '\u2800', '\u3164', '\u00AD\u200D', '\uFE0F'])('is not nothing visible (%j)', (name) => {
    expect(isReadableName(name)).toBe(false)
    expect(readPerson(name).ok).toBe(false)
  })
})

describe('a name in the midst of other text', () => {
  it('is set apart where it runs from right to left, and left as it is where not', () => {
    expect(isolated('Ana Ruiz')).toBe('Ana Ruiz')
    expect(isolated('יוסי')).toBe('\u2068יוסי\u2069')
  })
})
