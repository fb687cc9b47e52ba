import { describe, expect, it } from 'vitest'
import { auditAfter, named, readAfter, type Draft } from '../../engine/demo.ts'

function measure(spec: Draft, id: string) {
  const step = named(spec.steps, 'skirts')
  if (step.kind !== 'measure-limits') throw new Error('the step measures nothing')
  return named(step.measures, id)
}
const moor = (change: Parameters<typeof auditAfter>[1]) => auditAfter('moor-flat-4', change)

describe('what is measured against limits', () => {
  it('with a lower limit above its upper one, or a used part held closer than a new one, is a fault', () => {
    expect(
      moor((spec) => (measure(spec, 'skirt').new = { least: '0.7 mm', most: '0.07 mm' })),
    ).toContainEqual(expect.stringContaining('fault least-above-most'))
    expect(moor((spec) => (measure(spec, 'skirt').service = { most: '0.05 mm' }))).toEqual([
      expect.stringContaining('service-limits-narrower steps[8].measures[0].service: name=Piston clearance'),
    ])
  })

  it('with the same most for a used part as for a new one is none', () => {
    expect(
      moor((spec) => {
        const skirt = measure(spec, 'skirt')
        skirt.service = { most: skirt.new.most! }
      }),
    ).toEqual([])
  })

  it('at one place twice, or by one id twice, is a fault', () => {
    expect(moor((spec) => (measure(spec, 'skirt').at = ['Barrel 1', 'Barrel 1']))).toEqual([
      expect.stringContaining('measured-place-twice steps[8].measures[0].at: name=Piston clearance'),
    ])
    expect(moor((spec) => (measure(spec, 'pin').id = 'skirt'))).toEqual([
      expect.stringContaining('measure-twice steps[8].measures[1]: name=Pin in its piston, id=skirt'),
    ])
  })

  it('a ring gap that may close is a fault, and one that does not go with the bore is doubtful', () => {
    for (const limits of [{ most: '0.45 mm' }, { least: '0 mm', most: '0.45 mm' }])
      expect(
        moor((spec) => Object.assign(measure(spec, 'pin'), { what: 'ring-gap', new: limits })),
      ).toContainEqual(
        expect.stringContaining('ring-gap-may-close steps[8].measures[1].new: name=Pin in its piston'),
      )
    expect(
      moor((spec) =>
        Object.assign(measure(spec, 'pin'), {
          what: 'ring-gap',
          new: { least: '0.030 mm', most: '0.045 mm' },
        }),
      ),
    ).toContainEqual(expect.stringContaining('doubt ring-gap-unusual'))
  })

  it('must have a limit and a thing to measure', () => {
    const read = (change: Parameters<typeof readAfter>[1]) => readAfter('moor-flat-4', change)
    expect(read((spec) => (measure(spec, 'skirt').new = {}))).toEqual([
      expect.stringContaining('spec-part-wrong steps[8].measures[0].new: kind=group, should=limits-empty'),
    ])
  })
})
