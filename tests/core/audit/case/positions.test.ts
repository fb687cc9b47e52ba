import { describe, expect, it } from 'vitest'
import { auditAfter, named, nth, specOf, demoDraft } from '../../engine/demo.ts'
import { audit } from '../../../../core/audit/index.ts'

describe('bearings along the crank', () => {
  it('out of order are a fault: marks are read from the nose on', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      const [first, second] = [nth(spec.case.saddles, 1), nth(spec.case.saddles, 2)]
      ;[first.at, second.at] = [second.at, first.at]
    })
    expect(lines).toContain('fault saddles-out-of-order case.saddles[2].at: first=M2, second=M3')
  })

  it('that overlap are a fault', () => {
    // Saddle 2 from 137 to 159 mm, rod 2 from 184 to 208 mm; moved to 165 it begins at 153.
    expect(auditAfter('skerry-3', (spec) => (nth(spec.case.rods, 1).at = '165 mm'))).toEqual([
      'fault bearings-overlap case.rods[1]: first=M2, second=B2, by=6 mm',
    ])
  })

  it('may touch', () => {
    expect(auditAfter('skerry-3', (spec) => (nth(spec.case.rods, 1).at = '171 mm'))).toEqual([])
  })
})

it('bores wider than their pitch are a fault', () => {
  expect(auditAfter('skerry-3', (spec) => (spec.case.pitch = '80 mm'))).toContain(
    'fault bores-overlap case.pitch: bore=84 mm, pitch=80 mm',
  )
})

describe('rods', () => {
  it('of a cylinder that is not there are a fault', () => {
    expect(auditAfter('skerry-3', (spec) => (nth(spec.case.rods, 2).cylinder = 4))).toEqual([
      'fault rod-without-cylinder case.rods[2].cylinder: rod=B3, cylinder=4, cylinders=3',
    ])
  })

  it('of one cylinder twice are a fault', () => {
    expect(auditAfter('skerry-3', (spec) => (nth(spec.case.rods, 2).cylinder = 2))).toEqual([
      expect.stringContaining('fault cylinder-with-two-rods case.rods[2].cylinder: cylinder=2'),
    ])
  })

  it('may be left out altogether', () => {
    const spec = specOf(demoDraft('skerry-3'))
    const found = audit({ ...spec, case: { ...spec.case, rods: [] } })
    expect(found.filter(({ problem }) => problem.code === 'rods-missing')).toEqual([])
  })

  it('are missing where the case has one of them and more cylinders', () => {
    const spec = specOf(demoDraft('skerry-3'))
    const found = audit({ ...spec, case: { ...spec.case, rods: spec.case.rods.slice(0, 1) } })
    expect(found.map(({ problem }) => problem.code)).toContain('rods-missing')
  })

  it('fewer than cylinders are doubted', () => {
    expect(auditAfter('skerry-3', (spec) => (spec.case.cylinders = 4))).toEqual([
      expect.stringContaining('doubt rods-missing case.rods: rods=3, cylinders=4'),
    ])
  })
})

describe('what sits on a face', () => {
  it('outside its outline is a fault', () => {
    expect(
      auditAfter('skerry-3', (spec) => (named(spec.fasteners, 'flange-9').at = ['196 mm', '860 mm'])),
    ).toEqual([
      'fault outside-outline fasteners[8].at: what=fastenerNumbered, number=9, face=Case joint, x=196 mm, y=860 mm',
    ])
    expect(
      auditAfter('skerry-3', (spec) => (named(spec.case.dowels, 'dowel-1').at = ['-70 mm', '86 mm'])),
    ).toEqual([
      expect.stringContaining(
        'fault outside-outline case.dowels[0].at: what=dowelCalled, dowel=1, face=Case joint, x=-70 mm, y=86 mm',
      ),
    ])
  })

  it('may sit on its edge', () => {
    expect(
      auditAfter('skerry-3', (spec) => (named(spec.fasteners, 'flange-9').at = ['196 mm', '100 mm'])),
    ).toEqual([])
  })

  it('far from everything is a fault where the outline is grown', () => {
    expect(
      auditAfter('skerry-3', (spec) => (named(spec.fasteners, 'rod-1').at = ['100 mm', '3100 mm'])),
    ).toEqual([
      'fault far-outside fasteners[22].at: what=fastenerNumbered, number=R1, face=Big ends, x=100 mm, y=3100 mm',
    ])
  })

  it('on another fastener is a fault', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      named(spec.fasteners, 'case-2').at = named(spec.fasteners, 'case-1').at
    })
    expect(lines).toEqual([
      expect.stringMatching(
        /^fault parts-collide fasteners\[[01]\]\.at: .*number=[12], .*number=[12], face=Case joint$/,
      ),
    ])
  })

  it.each([
    ['nearer the nose than they are across', ['12 mm', '90 mm'], ['13 mm', '90 mm']],
    ['at the far end on the minus side', ['300 mm', '-90 mm'], ['301 mm', '-90 mm']],
  ] as const)('on another is a fault wherever the two are: %s', (_, one, other) => {
    const lines = auditAfter('skerry-3', (spec) => {
      named(spec.fasteners, 'case-1').at = [...one]
      named(spec.fasteners, 'case-2').at = [...other]
    })
    expect(lines.filter((line) => line.includes('parts-collide'))).toEqual([
      expect.stringContaining(
        'parts-collide fasteners[1].at: first=fastenerNumbered, number=1, second=fastenerNumbered, number=2, face=Case joint',
      ),
    ])
  })

  it('may touch another: two of M10 are 10 mm apart', () => {
    const apart = (x: number) =>
      auditAfter('skerry-3', (spec) => {
        named(spec.fasteners, 'case-1').at = ['12 mm', '90 mm']
        named(spec.fasteners, 'case-2').at = [`${12 + x} mm`, '90 mm']
      }).filter((line) => line.includes('parts-collide')).length
    expect([apart(10), apart(9.999)]).toEqual([0, 1])
  })

  it('on a dowel is a fault', () => {
    expect(
      auditAfter('skerry-3', (spec) => (named(spec.case.dowels, 'dowel-1').at = ['98 mm', '86 mm'])),
    ).toEqual([
      expect.stringMatching(
        /^fault parts-collide .*(dowel=1, .*number=13|number=13, .*dowel=1), face=Case joint$/,
      ),
    ])
  })

  it('a thousand times over is reported without choking', () => {
    const draft = demoDraft('skerry-3')
    const [first] = draft.fasteners
    if (first === undefined) throw new Error('the demo has fasteners')
    for (let count = 0; count < 1000; count++)
      draft.fasteners.push({ ...first, id: `heap-${count}`, number: `H${count % 1000}` })
    const collisions = audit(specOf(draft)).filter(({ problem }) => problem.code === 'parts-collide')
    expect(collisions).toHaveLength(1000)
  })
})

it('an outline that crosses itself is a fault', () => {
  const lines = auditAfter('skerry-3', (spec) => {
    const outline = named(spec.case.faces, 'sump').outline ?? []
    ;[outline[2], outline[3]] = [nth(outline, 3), nth(outline, 2)]
  })
  expect(lines).toContainEqual(
    expect.stringContaining('fault outline-crosses-itself case.faces[2].outline: face=Sump face'),
  )
})
