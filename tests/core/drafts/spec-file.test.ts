import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  beginDraft,
  decideDraft,
  documentIn,
  documentOf,
  documentText,
  evolveDraft,
  readSpecFile,
  specFileOf,
  type DraftAct,
} from '../../../core/drafts/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import { checkProperty } from '../../property.ts'
import { runs } from '../../runs.ts'
import { misprinted } from '../engine/damaged.ts'
import { demoIds, demoText } from '../engine/demo.ts'

const sha256 = (text: string) => createHash('sha256').update(text).digest('hex')
const read = (text: string) => readSpecFile(text, sha256)
const file = (id: string) => specFileOf(demoText(id), sha256)

function codeOf(text: string): string {
  const answer = read(text)
  if (!answer.ok) expect(sentenceOf(answer.problem)).toMatch(/^\S.+[.!]$/s)
  return answer.ok ? 'read' : answer.problem.code
}

const around = (change: object) => JSON.stringify({ ...(JSON.parse(file('skerry-3')) as object), ...change })

describe('a file of a spec', () => {
  it('gives back every demo to the byte', () => {
    for (const id of demoIds) expect(read(file(id)), id).toMatchObject({ value: { text: demoText(id) } })
  })

  it('gives back any spec to the byte, however it is written', () => {
    checkProperty(
      fc.property(misprinted, fc.constantFrom(undefined, 2), (spec, indent) => {
        const text = JSON.stringify(spec, null, indent)
        const back = read(specFileOf(text, sha256))
        if (back.ok) expect(back.value.text).toBe(text)
        else expect(back.problem.code).toBe('spec-file-not-a-spec')
      }),
      { numRuns: runs(25, 200) },
    )
  })

  it('goes through the editor and into a file again as the same spec, over demos and random specs', () => {
    const what = { code: 'valueChanged', facts: { place: { code: 'angleInAll', facts: {} } } } as never
    const patches = [{ op: 'replace', path: '/summary', value: 'Edited' } as const]
    const acts: readonly DraftAct[] = [
      { type: 'edit', edit: { what, patches: [...patches] } },
      { type: 'undo' },
    ]
    let through = 0
    const goesThrough = (text: string) => {
      const before = read(specFileOf(text, sha256))
      if (!before.ok) return
      through += 1
      const draft = acts.reduce(
        (now, act) => {
          const event = decideDraft(now, act, 'Ada Brook')
          if (!event.ok) throw new Error(event.problem.code)
          return evolveDraft(now, { event: event.value, person: 'Ada Brook' })
        },
        beginDraft(documentIn(text)),
      )
      const after = read(specFileOf(documentText(documentOf(draft)), sha256))
      expect(after.ok && after.value.spec).toEqual(before.value.spec)
      expect(after.ok && documentIn(after.value.text)).toEqual(documentIn(text))
    }
    for (const id of demoIds) goesThrough(demoText(id))
    expect(through).toBe(demoIds.length)
    checkProperty(
      fc.property(misprinted, (spec) => goesThrough(JSON.stringify(spec))),
      { numRuns: runs(25, 200) },
    )
    expect(through).toBeGreaterThan(demoIds.length + 5)
  })

  it('is taken with the mark of byte order that an editor puts before it', () => {
    expect(codeOf(`\uFEFF${file('skerry-3')}`)).toBe('read')
  })

  it('of a newer or an older form is told apart from one that is none', () => {
    expect(codeOf(around({ schema: 2 }))).toBe('spec-file-newer')
    expect(codeOf(around({ bedplateSpecFile: 2, more: true }))).toBe('spec-file-newer')
    expect(codeOf(around({ schema: 0 }))).toBe('spec-file-older')
    expect(codeOf(around({ more: true }))).toBe('spec-file-foreign')
    expect(codeOf(demoText('skerry-3'))).toBe('spec-file-foreign')
    expect(codeOf('')).toBe('spec-file-foreign')
  })

  it('with a value that somebody changed by hand is refused', () => {
    expect(codeOf(file('skerry-3').replace('84 mm', '85 mm'))).toBe('spec-file-altered')
    expect(codeOf(around({ sha256: sha256('another text') }))).toBe('spec-file-altered')
    const noSpec = specFileOf('{}', sha256)
    expect(codeOf(noSpec)).toBe('spec-file-not-a-spec')
  })

  it('that was cut or changed anywhere is refused in a sentence, or is the very same spec', () => {
    const text = file('skerry-3')
    checkProperty(
      fc.property(fc.nat(text.length - 1), fc.constantFrom('', 'x', '"', '{', '\n'), (at, character) => {
        const changed =
          character === '' ? text.slice(0, at) : text.slice(0, at) + character + text.slice(at + 1)
        const answer = read(changed)
        if (answer.ok) expect(answer.value.text).toBe(demoText('skerry-3'))
        else expect(codeOf(changed)).toMatch(/^spec-file-(foreign|altered|newer)$/)
      }),
      { numRuns: runs(60, 400) },
    )
  })
})
