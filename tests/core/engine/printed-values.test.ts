import { describe, expect, it } from 'vitest'
import { passText } from '../../../core/tightening/index.ts'
import { demoDraft, named, nth, readAfter, specOf, type Draft } from './demo.ts'
import { en } from '../../../core/words/index.ts'

/** The rods of a demo tightened by passes of our own. */
function rods(...passes: readonly object[]) {
  return (spec: Draft): void => {
    const procedure = named(spec.procedures, 'rods')
    const order = nth(procedure.orders, 0).id
    procedure.passes = passes.map((pass) => ({ order, ...pass })) as never
  }
}

function read(...passes: readonly object[]) {
  const draft = demoDraft('skerry-3')
  rods(...passes)(draft)
  const spec = specOf(draft)
  return { spec, passes: named(spec.procedures, 'rods').passes }
}

const torque = { kind: 'torque', target: '15 N·m' }
const turn = (target: string, more: object = {}) => ({ kind: 'angle', target, ...more })
const inAll = (angle: string, more: object = {}) => ({ kind: 'angle', inAll: angle, ...more })

describe('a torque that is printed as a range', () => {
  it('aims at its middle', () => {
    expect(read({ kind: 'torque', least: '14 N·m', most: '18 N·m' }).passes[0]).toMatchObject({ target: 16 })
    expect(
      read({ ...torque, others: [{ fasteners: ['rod-1'], least: '10 N·m', most: '12 N·m' }] }).passes[0],
    ).toMatchObject({ target: 15, others: [{ target: 11 }] })
    expect(read(torque, { kind: 'recheck', least: '14 N·m', most: '15 N·m' }).passes[1]).toMatchObject({
      target: 14.5,
    })
  })

  it('keeps a target that is printed with it', () => {
    expect(read({ ...torque, least: '14 N·m', most: '18 N·m' }).passes[0]).toMatchObject({ target: 15 })
  })

  it.each([
    [{ kind: 'torque' }],
    [{ kind: 'torque', least: '14 N·m' }],
    [{ kind: 'torque', most: '14 N·m' }],
  ])('%j is refused: a range has two ends', (pass) => {
    expect(readAfter('skerry-3', rods(pass))).toEqual([
      expect.stringContaining('spec-part-missing procedures[0].passes[0].target: should=torque-or-range'),
    ])
  })
})

describe('an angle that is counted in all', () => {
  it('is what is left of it after the turns before', () => {
    expect(read(torque, turn('40 °'), inAll('65 °')).passes[2]).toMatchObject({ target: 25, inAll: 65 })
    expect(
      read(torque, turn('20 °'), turn('20 °'), inAll('65 °'), inAll('90 °')).passes.slice(3),
    ).toMatchObject([{ target: 25 }, { target: 25 }])
    expect(read(torque, inAll('65 °')).passes[1]).toMatchObject({ target: 65 })
  })

  it('has limits that count in all as well', () => {
    expect(
      read(torque, turn('40 °'), inAll('65 °', { least: '60 °', most: '70 °' })).passes[2],
    ).toMatchObject({
      least: 20,
      most: 30,
    })
  })

  it('counts from the last torque, or from loosening', () => {
    expect(read(torque, turn('40 °'), torque, inAll('65 °')).passes[3]).toMatchObject({ target: 65 })
    expect(read(torque, turn('40 °'), { kind: 'loosen' }, inAll('65 °')).passes[3]).toMatchObject({
      target: 65,
    })
  })

  it('is said with what it is in all', () => {
    const { spec, passes } = read(torque, turn('40 °'), inAll('65 °'))
    expect(passText(en, spec, nth(passes, 2), { torque: 'N·m', length: 'mm' })).toBe('angle, 25°; 65° in all')
    expect(passText(en, spec, nth(passes, 1), { torque: 'N·m', length: 'mm' })).toBe('angle, 40°')
  })

  it.each([
    [
      'as much as was turned',
      [torque, turn('65 °'), inAll('65 °')],
      'spec-part-wrong procedures[0].passes[2].inAll: kind=text, text=65 °, should=in-all-unclear',
    ],
    [
      'not alike for all',
      [torque, turn('40 °', { others: [{ fasteners: ['rod-1'], target: '50 °' }] }), inAll('65 °')],
      'spec-part-wrong procedures[0].passes[2].inAll: kind=text, text=65 °, should=in-all-unclear',
    ],
    ['both ways', [torque, turn('40 °', { inAll: '65 °' })], 'should=turn-or-in-all'],
    ['neither way', [torque, { kind: 'angle' }], 'should=turn-or-in-all'],
    [
      'and by itself for some',
      [torque, inAll('65 °', { others: [{ fasteners: ['rod-1'], target: '50 °' }] })],
      'spec-part-wrong procedures[0].passes[1].others: kind=list, length=1, should=others-with-in-all',
    ],
  ])('%s is refused', (_, passes, sentence) => {
    expect(readAfter('skerry-3', rods(...passes))).toEqual([expect.stringContaining(sentence)])
  })
})
