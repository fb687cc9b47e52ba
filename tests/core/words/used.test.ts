import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { en } from '../../../core/words/index.ts'

const root = join(import.meta.dirname, '../../..')

const paths = ['core', 'electron', 'renderer']
  .flatMap((folder) => readdirSync(join(root, folder), { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile() && /\.(ts|mjs|svelte)$/.test(entry.name))
  .map((entry) => join(entry.parentPath, entry.name))
const isTable = (path: string) => path.startsWith(join(root, 'core/words/en'))
const textOf = (from: readonly string[]) => from.map((path) => readFileSync(path, 'utf8')).join('\n')

const source = textOf(paths.filter((path) => !isTable(path)))
/** A message may be made with names from another table. */
const tables = textOf(paths.filter(isTable))

/** `words.SUBJECT.message` as it must stand in the source, for each message; a problem is named by its code. */
function namesOf(subject: string, table: object): readonly string[] {
  return Object.entries(table).flatMap(([key, message]) =>
    typeof message === 'object' && message !== null && !Array.isArray(message)
      ? namesOf(`${subject}.${key}`, message as object)
      : [`${subject}.${key}`],
  )
}

describe('the table of texts', () => {
  const { problems, ...subjects } = en

  it('has no text that the window never shows', () => {
    const names = Object.entries(subjects).flatMap(([subject, table]) => namesOf(subject, table))
    expect(names.length).toBeGreaterThan(10)
    expect(names.filter((name) => !isUsed(name))).toEqual([])
  })

  it('has no sentence for a problem that is never found', () => {
    const codes = Object.keys(problems)
    expect(codes.length).toBeGreaterThan(100)
    expect(codes.filter((code) => !source.includes(`'${code}'`))).toEqual([])
  })
})

/**
 * By its whole name; through its table where that is looked up by a key: `words.shells.state[row.state]`; or by its code, where
 * its table is handed over with a message: `textIn(words, words.doctor.lines, line.says)`.
 */
function isUsed(name: string): boolean {
  const parent = name.slice(0, name.lastIndexOf('.'))
  const isNamed = source.includes(`'${name.slice(parent.length + 1)}'`)
  return (
    (isNamed && source.includes(`words, words.${parent},`)) ||
    new RegExp(`words\\.${name}\\b`).test(source) ||
    source.includes(`words.${parent}[`) ||
    tables.includes(`${parent}[`)
  )
}
