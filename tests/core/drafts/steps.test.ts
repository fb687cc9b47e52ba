import { describe, expect, it } from 'vitest'
import {
  choicesFor,
  namesTyped,
  newStep,
  stepKinds,
  stepNeeds,
  toggled,
  withoutStep,
  withStep,
  withStepMoved,
  type StepNeed,
  type TypedStep,
} from '../../../core/drafts/index.ts'
import { engineSpec, readSpec, type SpecDocument } from '../../../core/engine/index.ts'
import { documentOf } from './document-of-demo.ts'

const moor = documentOf('moor-flat-4')
const ids = ({ steps }: SpecDocument) => steps.map(({ id }) => id)

/** All that a kind needs, as a person would say it. */
function said(document: SpecDocument, kind: (typeof stepKinds)[number]): TypedStep {
  const typed: Partial<Record<StepNeed, string>> = { limits: '0.10 to 0.25 mm' }
  for (const need of stepNeeds[kind]) {
    const choices = choicesFor(document, need)
    typed[need] ??= choices === null ? 'As the manual says' : choices[0]!
  }
  return { name: 'New one', ...typed }
}

describe('a new step', () => {
  it('can be of every kind that the schema has', () => {
    const kinds = engineSpec.shape.steps.element.options.map(({ shape }) => shape.kind.value)
    expect(stepKinds.toSorted()).toEqual(kinds.toSorted())
  })

  it.each(stepKinds)('is read once all that it needs is said, and is none before: %s', (kind) => {
    const typed = said(moor, kind)
    const step = newStep(moor, kind, typed)!
    expect(step.kind).toBe(kind)
    expect(step.after).toBeUndefined()
    const read = readSpec(JSON.stringify(withStep(moor, step, null)))
    expect(read.ok ? [] : read.problems).toEqual([])
    for (const need of ['name', ...stepNeeds[kind]] as const)
      expect(newStep(moor, kind, { ...typed, [need]: ' ' })).toBeNull()
  })

  it('stands behind the one that is said, or first', () => {
    const step = newStep(moor, 'count', { name: 'Once more' })!
    const [first, second] = ids(moor)
    expect(ids(withStep(moor, step, first!)).slice(0, 3)).toEqual([first, step.id, second])
    expect(ids(withStep(moor, step, null))[0]).toBe(step.id)
  })
})

describe('places in a line', () => {
  it('keep their other languages where they read as before, and are written as typed where they do not', () => {
    const written = [{ en: 'Bore 1', de: 'Zylinder 1' }, 'Bore 2']
    const shown = [
      { key: 'Bore 1', text: 'Zylinder 1' },
      { key: 'Bore 2', text: 'Bore 2' },
    ]
    expect(namesTyped('Bore 2; Zylinder 3, Zylinder 1,', written, shown)).toEqual([
      'Bore 2',
      'Zylinder 3',
      { en: 'Bore 1', de: 'Zylinder 1' },
    ])
  })
})

describe('a step in the list', () => {
  it('is moved, and no further than its ends', () => {
    const [first, second, third] = ids(moor)
    expect(ids(withStepMoved(moor, second!, -1)).slice(0, 3)).toEqual([second, first, third])
    expect(ids(withStepMoved(moor, second!, -9))[0]).toBe(second)
    expect(ids(withStepMoved(moor, second!, 999)).at(-1)).toBe(second)
    expect(ids(withStepMoved(moor, 'no-such', 1))).toEqual(ids(moor))
  })

  const chain: SpecDocument = {
    ...moor,
    parts: [],
    case: { ...moor.case, faces: moor.case.faces.map(({ gasket: _, ...face }) => face) },
    cautions: [
      { signal: 'NOTICE', text: 'Beside two', steps: ['b', 'c'] },
      { signal: 'NOTICE', text: 'Beside all' },
    ],
    steps: [
      { id: 'a', name: 'A', kind: 'count' },
      { id: 'b', name: 'B', kind: 'count', after: ['a'] },
      { id: 'c', name: 'C', kind: 'count', after: ['b'] },
    ],
  }

  it('hands on what waited for it when it is taken out, and its caution stays beside the others', () => {
    const left = withoutStep(chain, 'b')
    if (!left.ok) throw new Error(left.problem.code)
    expect(left.value.steps).toEqual([
      { id: 'a', name: 'A', kind: 'count' },
      { id: 'c', name: 'C', kind: 'count', after: ['a'] },
    ])
    expect(left.value.cautions.map(({ steps }) => steps)).toEqual([['c'], undefined])
  })

  it('stays where a caution stands beside it alone: it would stand beside all then', () => {
    const alone = { ...chain, cautions: [{ signal: 'NOTICE' as const, text: 'Beside B', steps: ['b'] }] }
    expect(withoutStep(alone, 'b')).toMatchObject({ problem: { code: 'draft-step-has-caution' } })
    expect(withoutStep(alone, 'c').ok).toBe(true)
  })

  it('stays where a part goes in', () => {
    const { step } = moor.parts![0]!.usedIn[0]!
    expect(withoutStep(moor, step)).toMatchObject({ problem: { code: 'draft-step-uses-part' } })
  })
})

describe('a list with ticks', () => {
  it('keeps the order of all there are, and is left out with its last one', () => {
    expect(toggled(['a', 'b', 'c'], ['c'], 'a')).toEqual(['a', 'c'])
    expect(toggled(['a', 'b', 'c'], ['a', 'c'], 'a')).toEqual(['c'])
    expect(toggled(['a', 'b', 'c'], ['c'], 'c')).toBeUndefined()
    expect(toggled(['a', 'b', 'c'], undefined, 'b')).toEqual(['b'])
  })
})
