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

  it.each([
    ['a plain table', 'run.next', 'run.neverShown'],
    ['a table in a table', 'run.wait.left', 'run.wait.neverShown'],
    ['a table that is looked up by a code', 'doctor.lines.disk-full', 'doctor.lines.never-shown'],
    ['a table that another table is made from', 'passes.kinds.seat', 'passes.kinds.never-shown'],
  ])('would be found out with a text that nobody shows, in %s', (_, used, unused) => {
    const names = Object.entries(subjects).flatMap(([subject, table]) => namesOf(subject, table))
    expect(names).toContain(used)
    expect(isUsed(used)).toBe(true)
    expect(isUsed(unused)).toBe(false)
  })
})

/** `table.message` as it stands in the source: named in full, or taken apart: `{ half } = words.described`. */
const named = new Set<string>()
/** Tables that are looked up by a key, or handed over with a message: `textIn(words, words.doctor.lines, line.says)`. */
const lookedUp = new Set<string>()
/** What stands in the source as a key or code. */
const keys = new Set<string>()

const everywhere = source + tables
for (const [, table, own] of everywhere.matchAll(/\b(\w+)(?=\.(\w+))/g)) named.add(`${table}.${own}`)
for (const [, names, table] of source.matchAll(/\{([^{}]*)\}+ = (?:\w+\.)*(\w+)\b/g)) taken(table, names)
for (const [, table, names] of source.matchAll(/\b(\w+): \{([^{}]*)\}/g)) taken(table, names)
for (const [, table = ''] of everywhere.matchAll(/\b(\w+)\[/g)) lookedUp.add(table)
for (const [, table = ''] of everywhere.matchAll(/words, words\.(?:\w+\.)*(\w+),/g)) lookedUp.add(table)
for (const [, code, key] of source.matchAll(/['"]([\w-]+(?: \w+)*)['"]|\b(\w+):/g))
  keys.add(code ?? key ?? '')

function taken(table = '', names = '') {
  for (const [own] of names.matchAll(/\w+/g)) named.add(`${table}.${own}`)
}

/** By the name of its table and its own. Where its table is looked up, its own name stands as a key or code somewhere. */
function isUsed(name: string): boolean {
  const [own = '', table = ''] = name.split('.').toReversed()
  return named.has(`${table}.${own}`) || (lookedUp.has(table) && (keys.has(own) || /^\d+$/.test(own)))
}
