import { describe, expect, it } from 'vitest'
import {
  checkedText,
  choiceTextAt,
  differencesBetween,
  valuesToCheck,
  type OpenDocument,
} from '../../../core/drafts/index.ts'
import { textIn } from '../../../core/problem/index.ts'
import { languages, loadWords } from '../../../core/words/index.ts'
import { specJsonSchema } from '../engine/json-schema.ts'
import { documentOf } from './document-of-demo.ts'

/** JSON Schema has `false` where nothing may stand. */
type Form = Group | false
interface Group {
  readonly $ref?: string
  readonly $defs?: Readonly<Record<string, Form>>
  readonly properties?: Readonly<Record<string, Form>>
  readonly items?: Form
  readonly anyOf?: readonly Form[]
  readonly oneOf?: readonly Form[]
  readonly enum?: readonly unknown[]
  readonly const?: unknown
}

/** Every choice of the form of a spec with the keys that lead to it, as `steps 0 kind: clean`. */
function choicesIn(whole: Form, form: Form, keys: readonly (string | number)[]): readonly string[] {
  if (form === false) return []
  const { $ref, properties = {}, items, anyOf = [], oneOf = [] } = form
  const named =
    $ref === undefined
      ? []
      : [
          $ref
            .split('/')
            .reduce<unknown>(
              (at, key) => (key === '#' ? at : (at as Record<string, unknown>)[key]),
              whole,
            ) as Form,
        ]
  const values = [...(form.enum ?? []), form.const]
  return [
    ...values.flatMap((value) => (typeof value === 'string' ? [`${keys.join(' ')}: ${value}`] : [])),
    ...[...named, ...anyOf, ...oneOf].flatMap((each) => choicesIn(whole, each, keys)),
    ...(items === undefined ? [] : choicesIn(whole, items, [...keys, 0])),
    ...Object.entries(properties).flatMap(([key, each]) => choicesIn(whole, each, [...keys, key])),
  ]
}

/** Fields whose choices are shown as they stand, each with its reason. */
const asTheyStand: Readonly<Record<string, string>> = {
  frictionClass: 'a letter of VDI 2230',
  kind: 'of a source: it is replaced as a whole, with what stands in it',
  how: 'a check of a value is no value itself',
  pattern: 'how the marks of a grade are filled: it is drawn',
  picture: 'a picture: it is shown',
  what: 'which picture goes with a measure',
  split: 'which way a case comes apart: its bearings are named by it',
  thrustSide: 'left or right of the piston',
  halves: 'whether one part number is for both halves',
  repeat: 'there or not',
  mayBeSkipped: 'there or not',
  shows: 'of a step: there or not',
}

describe('choices of a spec', () => {
  it.each(languages)(
    'are called what their forms call them, all but those named here: %s',
    async (language) => {
      const words = await loadWords(language)
      const form = specJsonSchema() as Form
      const choices = [...new Set(choicesIn(form, form, []))]
      const without = choices.filter((each) => {
        const [path = '', value] = each.split(': ')
        const keys = path.split(' ').map((key) => (/^\d+$/.test(key) ? Number(key) : key))
        return choiceTextAt(words, keys, value) === null
      })
      const fields = new Set(without.map((each) => /(\S+?)(?: \d+)?: /.exec(each)![1]!))
      expect(choices.length - without.length).toBeGreaterThan(60)
      expect([...fields].toSorted()).toEqual(Object.keys(asTheyStand).toSorted())
    },
  )

  it('are said in words where a second person compares them', async () => {
    const words = await loadWords('de')
    const said = valuesToCheck(documentOf('skerry-3')).map((value) => checkedText(words, value))
    expect(said).toContain(words.editor.fields.reuses['new-each-time'])
    expect(said.filter((text) => /new-each-time|^oiled$|torque/.test(text))).toEqual([])
  })

  it('and names are said in the language of the window where two revisions differ', async () => {
    const words = await loadWords('es')
    const before = documentOf('skerry-3')
    const after = structuredClone<unknown>(before) as OpenDocument
    after.fastenerGroups[0]!.reuse =
      before.fastenerGroups[0]!.reuse === 'reusable' ? 'new-each-time' : 'reusable'
    const [found] = differencesBetween(words, before, after, 'es')
    const { name } = before.fastenerGroups[0]!
    const { reuses } = words.editor.fields
    expect([found!.before, found!.after].toSorted()).toEqual(Object.values(reuses).toSorted())
    expect(typeof name).toBe('object')
    expect(textIn(words, words.phrases, found!.place)).toContain((name as { readonly es: string }).es)
  })
})
