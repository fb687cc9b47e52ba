import { describe, expect, it } from 'vitest'
import { auditAfter, named, type Draft } from '../../engine/demo.ts'

const without = (id: string) => (spec: Draft) => {
  spec.steps = spec.steps.filter((step) => step.id !== id)
  for (const step of spec.steps) step.after = (step.after ?? []).filter((each) => each !== id)
  for (const caution of spec.cautions) {
    if (caution.steps !== undefined) caution.steps = caution.steps.filter((each) => each !== id)
  }
}

describe('steps that wait for one another', () => {
  it('in a ring are a fault, and only the ring is named', () => {
    expect(
      auditAfter('skerry-3', (spec) => (named(spec.steps, 'lay-crank').after = ['fit-mains', 'rods-free'])),
    ).toEqual([
      'fault steps-in-a-ring steps[7].after: steps=Lay crank Rods free Rod bolts Rod shells End float',
    ])
  })

  it('and for themselves too', () => {
    expect(auditAfter('skerry-3', (spec) => (named(spec.steps, 'last-look').after = ['last-look']))).toEqual([
      expect.stringContaining('steps-in-a-ring steps[20].after: steps=Last check'),
    ])
  })
})

describe('what no step does', () => {
  it.each([
    ['case-run', 'fault procedure-never-run procedures[1]: procedure=Case bolts'],
    ['bead-minus', 'fault bead-never-laid beads[1]: bead=Bead, gear side'],
    ['crank-marks', 'fault fit-without-step fits[0]: fit=Main bearings, missing=note-journal-marks'],
    ['rod-marks', 'fault fit-without-step fits[1]: fit=Big ends, missing=note-housing-marks'],
    ['choose-mains', 'fault fit-without-step fits[0]: fit=Main bearings, missing=choose-shells'],
    ['fit-rod-shells', 'fault fit-without-step fits[1]: fit=Big ends, missing=fit-shells'],
  ])('without “%s” is a fault', (id, words) => {
    expect(auditAfter('skerry-3', without(id))).toEqual([expect.stringContaining(words)])
  })
})

it('what two steps do is a fault: the second would find it done', () => {
  expect(
    auditAfter('skerry-3', (spec) => {
      spec.steps.push({
        id: 'again',
        name: 'Once more',
        kind: 'run-procedure',
        procedure: 'sump',
        after: ['sump-run'],
      })
    }),
  ).toEqual([
    'fault done-in-two-steps steps[21]: kind=run-procedure, procedure=sump, first=Sump screws, second=Once more',
  ])
})

describe('shells', () => {
  it('chosen before the marks are noted are doubted', () => {
    expect(
      auditAfter('skerry-3', (spec) => (named(spec.steps, 'choose-mains').after = ['case-marks'])),
    ).toEqual(['doubt step-does-not-wait steps[4].after: step=Choose mains, other=Crank marks'])
  })

  it('may wait by way of other steps', () => {
    expect(
      auditAfter(
        'skerry-3',
        (spec) =>
          (named(spec.steps, 'fit-rod-shells').after = ['last-word']) &&
          spec.steps.push({
            id: 'last-word',
            name: 'Last word',
            kind: 'check',
            instruction: 'Count the shells.',
            after: ['choose-big-ends', 'end-float'],
          }),
      ),
    ).toEqual([])
  })
})
