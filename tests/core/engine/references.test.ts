import { describe, expect, it } from 'vitest'
import { named, nth, readAfter, type Draft } from './demo.ts'

describe('ids that stand twice', () => {
  const twice: readonly (readonly [string, (spec: Draft) => void, string])[] = [
    ['fasteners', (s) => (nth(s.fasteners, 3).id = 'case-1'), 'fasteners: what=fastener, id=case-1'],
    [
      'a saddle and a rod, which would share their shells',
      (s) => (nth(s.case.rods, 0).id = 'M1'),
      'case: what=bearing, id=M1',
    ],
    [
      'grades',
      (s) => (nth(nth(s.fits, 0).grades, 1).grade = 'R'),
      'fits[0].grades: what=grade, what=fit, id=mains, id=R',
    ],
    [
      'marks',
      (s) => (nth(nth(s.fits, 0).journal.marks, 1).mark = 'F'),
      'fits[0].journal.marks: what=journal-mark, what=fit, id=mains, id=F',
    ],
    [
      'positions of a fit',
      (s) => (nth(s.fits, 0).positions[1] = 'M1'),
      'fits[0].positions: what=position, what=fit, id=mains, id=M1',
    ],
    [
      'orders of one procedure',
      (s) => (nth(named(s.procedures, 'sump').orders, 1).id = 'all'),
      'procedures[3].orders: what=order, what=procedure, id=sump, id=all',
    ],
    ['steps', (s) => (nth(s.steps, 1).id = 'case-marks'), 'steps: what=step, id=case-marks'],
  ]
  it.each(twice)('%s', (_, change, words) => {
    expect(readAfter('skerry-3', change)).toContainEqual(`spec-id-twice ${words}`)
  })

  it('may be the same in different lists: an order of two procedures, a fit and a bead', () => {
    expect(
      readAfter('skerry-3', (spec) => {
        nth(spec.beads, 0).id = 'mains'
        for (const step of spec.steps)
          if (step.kind === 'lay-bead' && step.bead === 'plus') step.bead = 'mains'
      }),
    ).toEqual([])
  })
})

describe('a reference to what is not there', () => {
  const dangling: readonly (readonly [string, (spec: Draft) => void, string])[] = [
    [
      'a fastener in an order',
      (s) => (nth(named(s.procedures, 'case').orders, 0).sequence[2] = 'case-33'),
      'procedures[1].orders[0].sequence[2]: what=fastener, id=case-33',
    ],
    [
      'a group',
      (s) => (nth(s.fasteners, 0).group = 'studs'),
      'fasteners[0].group: what=fastener-group, id=studs',
    ],
    ['a face of a fastener', (s) => (nth(s.fasteners, 0).face = 'roof'), 'fasteners[0].face:'],
    ['a face of a dowel', (s) => (nth(s.case.dowels, 0).face = 'roof'), 'case.dowels[0].face:'],
    [
      'a face of an oil passage',
      (s) => (nth(s.case.oilPassages, 0).face = 'roof'),
      'case.oilPassages[0].face:',
    ],
    ['a face of a procedure', (s) => (nth(s.procedures, 0).face = 'roof'), 'procedures[0].face:'],
    ['a face of a bead', (s) => (nth(s.beads, 0).face = 'roof'), 'beads[0].face:'],
    [
      'a face of a step',
      (s) => Object.assign(named(s.steps, 'lay-crank'), { face: 'roof' }),
      'steps[7].face:',
    ],
    [
      'a rod where a saddle must be',
      (s) => (nth(s.fits, 0).positions[1] = 'B2'),
      'fits[0].positions[1]: what=saddle, id=B2',
    ],
    [
      'a position of a chart cell',
      (s) => (nth(nth(s.fits, 0).chart, 0).positions = ['B1']),
      'fits[0].chart[0].positions[0]:',
    ],
    ['the thrust saddle', (s) => Object.assign(s.endFloat ?? {}, { saddle: 'M9' }), 'endFloat.saddle:'],
    [
      'an order of a pass',
      (s) => Object.assign(nth(nth(s.procedures, 0).passes, 0), { order: 'x' }),
      'procedures[0].passes[0].order:',
    ],
    [
      'a fastener with a value of its own',
      (s) =>
        Object.assign(nth(nth(s.procedures, 0).passes, 1), {
          others: [{ fasteners: ['rod-99'], target: '20 N·m' }],
        }),
      'procedures[0].passes[1].others[0].fasteners[0]:',
    ],
    ['the step before a step', (s) => (nth(s.steps, 4).after = ['tea']), 'steps[4].after[0]:'],
    ['a fit of a step', (s) => Object.assign(named(s.steps, 'fit-mains'), { fit: 'x' }), 'steps[6].fit:'],
    [
      'a procedure of a step',
      (s) => Object.assign(named(s.steps, 'case-run'), { procedure: 'x' }),
      'steps[15].procedure:',
    ],
    ['a bead of a step', (s) => Object.assign(named(s.steps, 'bead-plus'), { bead: 'x' }), 'steps[12].bead:'],
    ['a step of a caution', (s) => (nth(s.cautions, 1).steps = ['x']), 'cautions[1].steps[0]:'],
  ]
  it.each(dangling)('%s', (_, change, words) => {
    expect(readAfter('skerry-3', change)).toContainEqual(
      expect.stringContaining(`spec-reference-dangling ${words}`),
    )
  })
})
