import { describe, expect, it } from 'vitest'
import { engineSpec } from '../../../../core/engine/index.ts'
import { audit } from '../../../../core/audit/index.ts'
import { winchEngine } from '../../tightening/winch-engine.ts'
import { lineOf } from '../../../problem-line.ts'

type Passes = readonly unknown[]

/** What the audit says of the winch engine's caps with these passes. */
function findings(passes: Passes): readonly string[] {
  const [caps, ...others] = winchEngine.procedures
  const parsed = engineSpec.shape.procedures.parse([
    { id: 'caps', name: caps!.name, face: caps!.face, orders: caps!.orders, passes },
  ])
  return audit({ ...winchEngine, procedures: [...parsed, ...others] }).map(({ problem }) => lineOf(problem))
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
    expect(sentences.join(' ')).toContain(
      'stretch-without-length procedures[0].passes[2]: procedure=Main caps, pass=3, numbers=3 4',
    )
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
      'length-after-pull procedures[0].passes[1]: procedure=Main caps, pass=2, numbers=1 2 3 4',
    )
    const loosened = findings([
      torque,
      { kind: 'loosen', order: 'all' },
      { kind: 'length', order: 'all' },
      torque,
      stretch,
      used,
    ])
    expect(loosened.join(' ')).not.toContain(
      'length-after-pull procedures[0].passes[1]: procedure=Main caps, pass=2, numbers=1 2 3 4',
    )
  })

  it('doubts a stretch of 3 % of the clamped length: the bolts clamp 60 mm', () => {
    const stretched = (most: string) =>
      findings([
        { kind: 'length', order: 'all' },
        torque,
        { kind: 'stretch', order: 'all', least: '0.1 mm', most },
        used,
      ]).join(' ')
    expect(stretched('1.8 mm')).toContain(
      'stretch-large procedures[0].passes[2].most: procedure=Main caps, pass=3, group=Cap bolts, most=1.8 mm, grip=60 mm, percent=3 %',
    )
    expect(stretched('0.6 mm')).not.toContain('stretch-large')
    expect(stretched('0.601 mm')).toContain(
      'stretch-large procedures[0].passes[2].most: procedure=Main caps, pass=3, group=Cap bolts, most=0.601 mm, grip=60 mm, percent=1 %',
    )
  })

  it('doubts a torque after a turn, unless it was loosened between', () => {
    const angle = { kind: 'angle', order: 'all', target: '30 °' }
    expect(findings([torque, angle, torque, used]).join(' ')).toContain(
      'torque-after-turn procedures[0].passes[2]: procedure=Main caps, pass=3, numbers=1 2 3 4',
    )
    const between = findings([torque, angle, { kind: 'loosen', order: 'all' }, torque, used])
    expect(between.join(' ')).not.toContain(
      'torque-after-turn procedures[0].passes[2]: procedure=Main caps, pass=3, numbers=1 2 3 4',
    )
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
      /recheck-outside-order procedures\[0\]\.passes\[1\]\S*: procedure=Main caps, pass=2/,
    )
  })

  it('tells of an angle of 4,000° for some fasteners of a pass', () => {
    const angle = {
      kind: 'angle',
      order: 'all',
      target: '60 °',
      others: [{ fasteners: ['cap-2'], target: '4000 °' }],
    }
    expect(findings([torque, angle, used]).join(' ')).toContain(
      'angle-beyond-a-turn procedures[0].passes[1].target: procedure=Main caps, pass=2, angle=4000 °',
    )
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
