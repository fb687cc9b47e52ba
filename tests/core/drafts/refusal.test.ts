import { describe, expect, it } from 'vitest'
import {
  changesBetween,
  decideDraft,
  beginDraft,
  removed,
  withoutFace,
  withoutStep,
  withValueAt,
  type SpecDocument,
  type ValuePath,
} from '../../../core/drafts/index.ts'
import { sentenceIn, sentenceOf, type Outcome, type Problem } from '../../../core/problem/index.ts'
import { loadWords } from '../../../core/words/index.ts'
import { documentOf } from './document-of-demo.ts'

const de = await loadWords('de')

const fen = documentOf('fen-1')
const tarn = documentOf('tarn-4')

function refusalOf(outcome: Outcome<unknown>): Problem {
  if (outcome.ok) throw new Error('this is not refused')
  return outcome.problem
}

/** What the editor answers to a value at a path; undefined takes it out. */
function setIn(document: SpecDocument, path: ValuePath, value: unknown): Problem {
  const patches = [...changesBetween(document, withValueAt(document, path, value))]
  const edit = { what: { code: 'takenOut', facts: { count: 1 } } as const, patches }
  return refusalOf(decideDraft(beginDraft(document), { type: 'edit', edit }, 'Ada'))
}

describe('why an edit of a draft is refused', () => {
  it('is said by what a value is called on the screen', () => {
    const wrong = setIn(fen, ['case', 'saddles', 0, 'diameter'], 'wide')
    expect(sentenceOf(wrong)).toBe(
      'Case, saddle “M1”, diameter: “wide” is not a number. Type digits with a point or a comma, for example 12.5 or 12,5.',
    )
    expect(wrong.path).toBe('case.saddles[0].diameter')
    expect(sentenceOf(setIn(fen, ['case', 'bore'], '0 mm'))).toBe(
      'Case, cylinder bore: give a size above zero.',
    )
  })

  it('names what still needs what was taken out, and both by their names', () => {
    const at = fen.fastenerGroups.findIndex(({ id }) => id === fen.fasteners[0]!.group)
    const group = fen.fastenerGroups[at]! as { readonly id: string; readonly name: { readonly en: string } }
    const said = sentenceOf(setIn(fen, ['fastenerGroups', at], undefined))
    expect(said).toBe(
      `Fastener group “${group.name.en}” is still needed: fastener “${fen.fasteners[0]!.number}”. Change that first, then take it out.`,
    )
    expect(said).not.toContain(group.id)
  })

  it('names steps, parts, orders and faces by their names, each in the language of the sentence', () => {
    const part = tarn.parts![0]!
    const step = tarn.steps.find(({ id }) => id === part.usedIn[0]!.step)!
    const inGerman = (written: unknown) => (written as { readonly de: string }).de
    const used = refusalOf(withoutStep(tarn, step.id))
    expect(sentenceIn(de, used)).toContain(`„${inGerman(step.name)}“ wird „${inGerman(part.name)}“ eingebaut`)

    const [face] = tarn.case.faces
    expect(sentenceIn(de, refusalOf(withoutFace(tarn, face!.id)))).toContain(`„${inGerman(face!.name)}“`)

    const [procedure] = tarn.procedures
    const all = tarn.fasteners.map(({ id }) => ({ kind: 'fastener', id }) as const)
    const empty = sentenceIn(de, refusalOf(removed(tarn, all)))
    expect(empty).toContain(`des Anziehvorgangs „${inGerman(procedure!.name)}“`)
  })
})
