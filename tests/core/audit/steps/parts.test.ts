import { describe, expect, it } from 'vitest'
import { auditAfter, named, readAfter, type Draft } from '../../engine/demo.ts'

const moor = (change: Parameters<typeof auditAfter>[1]) => auditAfter('moor-flat-4', change)

describe('a parts list', () => {
  it('whose steps use more or fewer than it counts is a fault', () => {
    expect(moor((spec) => (named(spec.parts, 'circlips').count = 9))).toEqual([
      'fault part-count-differs parts[8]: part=Circlip, count=9, used=8',
    ])
  })

  it('with a part where nothing is fitted, or twice in a step, is a fault', () => {
    expect(
      moor((spec) => (named(spec.parts, 'strainer').usedIn = [{ step: 'end-float', count: 1 }])),
    ).toEqual(['fault part-where-nothing-is-fitted parts[10].usedIn[0]: part=Oil strainer, step=End float'])
    const [one, other] = [
      { step: 'sump-on', count: 1 },
      { step: 'sump-on', count: 1 },
    ]
    expect(moor((spec) => (named(spec.parts, 'sump-gaskets').usedIn = [one, other]))).toEqual([
      expect.stringContaining('part-twice-in-step parts[11].usedIn[1]: part=Sump gasket, step=Sump plate on'),
    ])
  })

  it('that is counted before its last part is in is doubtful, and so is one that nobody counts', () => {
    expect(moor((spec) => (named(spec.steps, 'count').after = ['turn-crank']))).toContainEqual(
      expect.stringContaining('step-does-not-wait steps[34].after: step=Count parts, other=Pistons'),
    )
    expect(moor((spec) => spec.steps.pop())).toEqual([
      expect.stringContaining('doubt parts-never-counted parts'),
    ])
  })

  it('must be there where its parts are counted', () => {
    const without = (spec: Draft) => {
      delete spec.parts
      delete named(spec.case.faces, 'sump').gasket
    }
    expect(moor(without)).toEqual([
      expect.stringContaining('count-without-parts steps[34]: step=Count parts'),
    ])
  })
})

describe('reading a parts list', () => {
  const read = (change: Parameters<typeof readAfter>[1]) => readAfter('moor-flat-4', change)

  it('says how long it may be: a thousand lines are none', () => {
    const lines = read((spec) => {
      const [line] = spec.parts!
      spec.parts = Array.from({ length: 1000 }, (_, index) => ({ ...line!, id: `part-${index}` }))
    })
    expect(lines).toEqual(['spec-part-wrong parts: kind=list, length=1000, should=parts-too-many, most=300'])
  })

  it('names a step that is not there, an id that is there twice, and a limit that says nothing', () => {
    expect(read((spec) => (named(spec.parts, 'pins').usedIn[0]!.step = 'pins-on'))).toEqual([
      expect.stringContaining('spec-reference-dangling parts[7].usedIn[0].step: what=step, id=pins-on'),
    ])
    expect(read((spec) => (named(spec.parts, 'pins').id = 'pistons'))).toEqual([
      expect.stringContaining('spec-id-twice parts: what=part, id=pistons'),
    ])
    expect(read((spec) => (named(spec.parts, 'pins').reuse = {}))).toEqual([
      expect.stringContaining('spec-part-wrong parts[7].reuse: kind=group, should=part-limit'),
    ])
  })

  it('may be missing: a spec of before is read as it is', () => {
    expect(readAfter('skerry-3', (spec) => delete spec.parts)).toEqual([])
  })
})
