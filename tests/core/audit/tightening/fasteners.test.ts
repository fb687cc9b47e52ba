import { describe, expect, it } from 'vitest'
import { auditAfter, demoDraft, named, type Draft } from '../../engine/demo.ts'

describe('fasteners that cannot be', () => {
  const group = (change: (group: Draft['fastenerGroups'][number]) => void) =>
    auditAfter('skerry-3', (spec) => change(named(spec.fastenerGroups, 'case-bolts')))

  it('of class 11.9 are a fault', () => {
    expect(group((bolts) => (bolts.propertyClass = '11.9'))).toEqual([
      expect.stringMatching(/^fault property-class-unknown fastenerGroups\[0\]: propertyClass=11\.9, /),
    ])
  })

  it('with a pitch larger than the diameter are a fault', () => {
    expect(group((bolts) => Object.assign(bolts.thread, { pitch: '12.5 mm' }))).toEqual([
      expect.stringContaining(
        'fault thread-pitch-out-of-range fastenerGroups[0]: diameterMm=10, pitchMm=12.5',
      ),
    ])
  })

  it('with a socket head are not measured by the flats of their key', () => {
    expect(
      group((bolts) => {
        bolts.acrossFlats = '8 mm'
        bolts.head = 'socket'
        bolts.headFace = { outer: '15 mm', hole: '11 mm' }
      }),
    ).toEqual([])
  })

  it('with a shank as thick as the thread, or hardly there, are a fault', () => {
    for (const shank of ['10 mm', '5 mm'])
      expect(group((bolts) => (bolts.shank = shank))).toEqual([
        expect.stringContaining('fault shank-not-waisted fastenerGroups[0].shank'),
      ])
    expect(group((bolts) => (bolts.shank = '8 mm'))).toEqual([])
  })

  it('with a shank between half of the thread and all of it may be', () => {
    // M10: more than 5 mm.
    const shank = (size: string) => group((bolts) => (bolts.shank = size)).length
    expect([shank('5.01 mm'), shank('9.99 mm')]).toEqual([0, 0])
  })

  it('with layers that are not their grip are a fault', () => {
    const layers = (second: string) => [
      { material: 'steel' as const, thickness: '10 mm' },
      { material: 'aluminium' as const, thickness: second },
    ]
    const grip = demoDraft('skerry-3').fastenerGroups[0]!.grip
    const rest = `${Number.parseFloat(grip) - 10} mm`
    expect(group((bolts) => (bolts.layers = layers('1 mm')))).toEqual([
      expect.stringContaining(`layers=11 mm, grip=${Number.parseFloat(grip)} mm`),
    ])
    expect(group((bolts) => (bolts.layers = layers(rest)))).toEqual([])
  })

  it('with a head narrower than the thread are a fault', () => {
    expect(
      group((bolts) => {
        bolts.acrossFlats = '9 mm'
        bolts.headFace = { outer: '15 mm', hole: '11 mm' }
      }),
    ).toEqual([
      expect.stringContaining(
        'fault head-smaller-than-thread fastenerGroups[0].acrossFlats: group=Case bolts, acrossFlats=9 mm, thread=10 mm',
      ),
    ])
  })

  it('with a head as wide as the thread are a fault', () => {
    const flats = (acrossFlats: string) =>
      group((bolts) => Object.assign(bolts, { acrossFlats, headFace: { outer: '15 mm', hole: '11 mm' } }))
        .length
    expect([flats('10 mm'), flats('10.01 mm')]).toEqual([1, 0])
  })

  it('with a bearing face inside its own hole are a fault', () => {
    expect(group((bolts) => (bolts.headFace = { outer: '11 mm', hole: '15 mm' }))).toEqual([
      expect.stringContaining('fault bearing-face-out-of-range fastenerGroups[0]'),
    ])
  })
})
