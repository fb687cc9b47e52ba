import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { documentIn } from '../../../core/drafts/index.ts'
import { placeInFile, placeInSpec } from '../../../core/engine/index.ts'
import { textIn } from '../../../core/problem/index.ts'
import { en, loadWords, type Words } from '../../../core/words/index.ts'
import { demoText } from './demo.ts'

const [de, es] = [await loadWords('de'), await loadWords('es')]

const document = {
  ...documentIn(demoText('skerry-3')),
  fastenerGroups: [{ id: 'group-1', name: 'Case bolts' }],
}
const path = ['fastenerGroups', 0, 'acrossFlats']

interface Schema {
  readonly type?: string
  readonly anyOf?: readonly Schema[]
  readonly properties?: Readonly<Record<string, Schema>>
}

/** Every key of the JSON Schema, which is made from the program's own; of lists alone where `is` says so. */
function keysIn(node: unknown, is: (value: Schema) => boolean = () => true): readonly string[] {
  if (typeof node !== 'object' || node === null) return []
  const here = Object.entries((node as Schema).properties ?? {}).flatMap(([key, value]) =>
    is(value) ? [key] : [],
  )
  return [...new Set([...here, ...Object.values(node).flatMap((each) => keysIn(each, is))])]
}
const isList = ({ type, anyOf = [] }: Schema): boolean => type === 'array' || anyOf.some(isList)

describe.each<[string, Words]>([
  ['en', en],
  ['de', de],
  ['es', es],
])('a place in a spec, in %s', (_, words) => {
  const schema: unknown = JSON.parse(readFileSync('specs/schema/engine-spec.json', 'utf8'))
  const said = (path: readonly (string | number)[]) => textIn(words, words.phrases, placeInSpec({}, path))
  const asKey = (key: string, ...entry: readonly number[]) =>
    said(['unheard', ...entry]).replace('unheard', key)

  it('has words for every part of a spec', () => {
    const keys = keysIn(schema)
    expect(keys.length).toBeGreaterThan(150)
    expect(keys.filter((key) => said([key]) === asKey(key))).toEqual([])
  })

  it('has words for one entry of every list', () => {
    const lists = keysIn(schema, isList)
    expect(lists).toEqual(expect.arrayContaining(['fasteners', 'sequence', 'pistons']))
    expect(lists.filter((key) => said([key, 0]) === asKey(key, 0))).toEqual([])
  })
})

describe('a place in a spec', () => {
  it('is said by what things are called on the screen', () => {
    expect(textIn(en, en.phrases, placeInSpec(document, path))).toBe(
      'fastener group “Case bolts”, across flats',
    )
  })

  it('is said by its keys and ids to who looks for it in the file', () => {
    expect(textIn(en, en.phrases, placeInFile(document, path))).toBe(
      'fastener group “group-1”, “acrossFlats”',
    )
  })

  it('keeps a key that has no name of its own', () => {
    expect(textIn(en, en.phrases, placeInSpec(document, ['somethingElse']))).toBe('“somethingElse”')
  })
})
