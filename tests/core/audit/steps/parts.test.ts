import { describe, expect, it } from 'vitest'
import { auditAfter, named, readAfter, type Draft } from '../../engine/demo.ts'

const moor = (change: Parameters<typeof auditAfter>[1]) => auditAfter('moor-flat-4', change)

describe('a parts list', () => {
  it('whose steps use more or fewer than it counts is a fault', () => {
    expect(moor((spec) => (named(spec.parts, 'circlips').count = 9))).toEqual([
      'fault part-count-differs parts[8]: “Circlip”: 9 on the list, and its steps use 8. Correct one of the two.',
    ])
  })

  it('with a part where nothing is fitted, or twice in a step, is a fault', () => {
    expect(
      moor((spec) => (named(spec.parts, 'strainer').usedIn = [{ step: 'end-float', count: 1 }])),
    ).toEqual([
      'fault part-where-nothing-is-fitted parts[10].usedIn[0]: “Oil strainer” is used in “End float”, and nothing is ' +
        'fitted there. Name a step that fits something.',
    ])
    const [one, other] = [
      { step: 'sump-on', count: 1 },
      { step: 'sump-on', count: 1 },
    ]
    expect(moor((spec) => (named(spec.parts, 'sump-gaskets').usedIn = [one, other]))).toEqual([
      expect.stringContaining('“Sump gasket” stands twice for “Sump plate on”'),
    ])
  })

  it('that is counted before its last part is in is doubtful, and so is one that nobody counts', () => {
    expect(moor((spec) => (named(spec.steps, 'count').after = ['turn-crank']))).toContainEqual(
      expect.stringContaining('“Count parts” can begin before “Pistons” is done. Let it come after that.'),
    )
    expect(moor((spec) => spec.steps.pop())).toEqual([
      expect.stringContaining('doubt parts-never-counted parts: There is a parts list'),
    ])
  })

  it('must be there where its parts are counted', () => {
    const without = (spec: Draft) => {
      delete spec.parts
      delete named(spec.case.faces, 'sump').gasket
    }
    expect(moor(without)).toEqual([
      expect.stringContaining('“Count parts” counts what is left over, and there is no parts list.'),
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
    expect(lines).toEqual([
      'spec-part-wrong parts: “parts” is a list of 1000. A parts list has at most 300 lines: put alike parts into one line ' +
        'with their count, and leave out what this build does not fit.',
    ])
  })

  it('names a step that is not there, an id that is there twice, and a limit that says nothing', () => {
    expect(read((spec) => (named(spec.parts, 'pins').usedIn[0]!.step = 'pins-on'))).toEqual([
      expect.stringContaining('names “pins-on”, and there is no such step'),
    ])
    expect(read((spec) => (named(spec.parts, 'pins').id = 'pistons'))).toEqual([
      expect.stringContaining('“pistons” stands twice as part'),
    ])
    expect(read((spec) => (named(spec.parts, 'pins').reuse = {}))).toEqual([
      expect.stringContaining('Say that it is new each time, or how long it may be used again'),
    ])
  })

  it('may be missing: a spec of before is read as it is', () => {
    expect(readAfter('skerry-3', (spec) => delete spec.parts)).toEqual([])
  })
})
