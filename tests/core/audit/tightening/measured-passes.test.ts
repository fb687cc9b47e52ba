import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../../core/problem/index.ts'
import { engineSpec } from '../../../../core/engine/index.ts'
import { audit } from '../../../../core/audit/index.ts'
import { winchEngine } from '../../tightening/winch-engine.ts'

type Passes = readonly unknown[]

/** What the audit says of the winch engine's caps with these passes. */
function findings(passes: Passes): readonly string[] {
  const [caps, ...others] = winchEngine.procedures
  const parsed = engineSpec.shape.procedures.parse([
    { id: 'caps', name: caps!.name, face: caps!.face, orders: caps!.orders, passes },
  ])
  return audit({ ...winchEngine, procedures: [...parsed, ...others] }).map(({ problem }) =>
    sentenceOf(problem),
  )
}

const torque = { kind: 'torque', order: 'all', target: '40 N·m' }
const used = { kind: 'recheck', order: 'first-two', target: '40 N·m' }

describe('audit of measured passes', () => {
  it('has nothing against a stretch after a length', () => {
    const stretch = { kind: 'stretch', order: 'all', least: '0.1 mm', most: '0.15 mm' }
    const sentences = findings([{ kind: 'length', order: 'all' }, torque, stretch, used])
    expect(sentences.filter((sentence) => /stretch/.test(sentence))).toEqual([])
  })

  it('tells of a stretch of fasteners that were not measured before', () => {
    const stretch = { kind: 'stretch', order: 'all', least: '0.1 mm', most: '0.15 mm' }
    const sentences = findings([{ kind: 'length', order: 'first-two' }, torque, stretch, used])
    expect(sentences.join(' ')).toContain('the stretch of 3 and 4 has no length to compare with')
  })

  it('doubts a length that is taken when the first torque has stretched the bolts already', () => {
    const stretch = { kind: 'stretch', order: 'all', least: '0.1 mm', most: '0.15 mm' }
    const late = findings([
      torque,
      { kind: 'length', order: 'all' },
      { ...torque, target: '60 N·m' },
      stretch,
    ])
    expect(late.join(' ')).toContain(
      'Main caps, pass 2: 1, 2, 3 and 4 would be measured when they are tightened already',
    )
    const loosened = findings([
      torque,
      { kind: 'loosen', order: 'all' },
      { kind: 'length', order: 'all' },
      torque,
      stretch,
      used,
    ])
    expect(loosened.join(' ')).not.toContain('tightened already')
  })

  it('doubts a stretch of 3 % of the clamped length: the bolts clamp 60 mm', () => {
    const stretched = (most: string) =>
      findings([
        { kind: 'length', order: 'all' },
        torque,
        { kind: 'stretch', order: 'all', least: '0.1 mm', most },
        used,
      ]).join(' ')
    expect(stretched('1.8 mm')).toContain('a stretch of 1.800 mm is 3.0 % of the 60 mm that Cap bolts clamp')
    expect(stretched('0.6 mm')).not.toContain('of the 60 mm')
    expect(stretched('0.601 mm')).toContain('1.0 % of the 60 mm')
  })

  it('doubts a torque after a turn, unless it was loosened between', () => {
    const angle = { kind: 'angle', order: 'all', target: '30 °' }
    expect(findings([torque, angle, torque, used]).join(' ')).toContain(
      'Main caps, pass 3: 1, 2, 3 and 4 would be torqued after they were turned by an angle',
    )
    const between = findings([torque, angle, { kind: 'loosen', order: 'all' }, torque, used])
    expect(between.join(' ')).not.toContain('after they were turned')
  })

  it('tells of limits the wrong way round', () => {
    const stretch = { kind: 'stretch', order: 'all', least: '0.2 mm', most: '0.15 mm' }
    const action = {
      kind: 'action',
      instruction: 'Measure the end float.',
      reading: { least: '0.3 mm', most: '0.1 mm' },
    }
    const before = findings([{ kind: 'length', order: 'all' }, torque, used]).length
    expect(findings([{ kind: 'length', order: 'all' }, torque, stretch, action, used])).toHaveLength(
      before + 2,
    )
  })

  it('tells of a recheck of fasteners that its order has not', () => {
    const sentences = findings([torque, { ...used, only: ['cap-1', 'cap-4'] }])
    expect(sentences.join(' ')).toMatch(
      /Main caps, pass 2: .*would be rechecked and are not in the pass’s order/,
    )
  })

  it('tells of an angle of 4,000° for some fasteners of a pass', () => {
    const angle = {
      kind: 'angle',
      order: 'all',
      target: '60 °',
      others: [{ fasteners: ['cap-2'], target: '4000 °' }],
    }
    expect(findings([torque, angle, used]).join(' ')).toContain('is more than a full turn')
  })
})

describe('bad input in passes', () => {
  const parse = (pass: unknown) =>
    engineSpec.shape.procedures.element.in.shape.passes.safeParse([pass]).success

  it.each([
    ['a recheck of no fastener', { ...used, only: [] }],
    ['a torque of 0 N·m', { ...torque, target: '0 N·m' }],
    ['a negative gap', { kind: 'seat', order: 'all', gap: { most: '-0.05 mm' } }],
    ['a repeat until something else', { ...used, repeat: 'twice' }],
  ])('%s is refused', (_, pass) => {
    expect(parse(pass)).toBe(false)
  })
})
