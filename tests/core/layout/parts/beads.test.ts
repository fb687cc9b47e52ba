import { describe, expect, it } from 'vitest'
import { sceneOf } from '../../../../core/layout/index.ts'
import { demo, factsAt, sheets } from '../demos.ts'
import { en } from '../../../../core/words/index.ts'

const spec = demo('skerry-3')
const view = { from: 'below', turn: 0 } as const
const drawn = (beads: Readonly<Record<string, 'to-lay' | 'laid'>>) =>
  sceneOf(en, spec, { ...factsAt(spec, 'joint', 'bare'), beads }, view, sheets[0]!)

describe('a bead', () => {
  it('is drawn as wide as it is laid, along the path of the spec', () => {
    const line = drawn({ plus: 'laid' }).shapes.find(({ id }) => id === 'bead/plus')
    expect(line).toMatchObject({ kind: 'line', role: 'bead-laid', width: 3, closed: false })
    // It begins at 24, 36 and goes on to 24, 62; seen from below y stays as it is but for the stretch across.
    const [x, y, toX, toY] = line?.kind === 'line' ? line.points : []
    expect([x, toX, toY! / y!]).toEqual([24, 24, expect.closeTo(62 / 36, 9)])
  })

  it('that is to be laid has a mark where the hand begins, and arrows along it', () => {
    const { shapes } = drawn({ plus: 'to-lay' })
    expect(shapes.find(({ role }) => role === 'bead-start')).toMatchObject({ x: 24 })
    const [arrow] = shapes.filter(({ id }) => id.startsWith('bead/plus/way/'))
    // From 36 to 356 along the pump side: the head points towards the drive end.
    const [wingX, , tipX] = arrow?.kind === 'line' ? arrow.points : []
    expect(tipX!).toBeGreaterThan(wingX!)
  })

  it('that is laid stays in sight while the next is to be laid; one that comes later is not drawn', () => {
    const { rows } = drawn({ plus: 'laid', minus: 'to-lay' })
    expect(rows.filter(({ about }) => about.startsWith('bead/'))).toEqual([
      { about: 'bead/plus', text: 'Bead, pump side: laid', state: 'laid' },
      { about: 'bead/minus', text: 'Bead, gear side: to lay', state: 'to-lay' },
    ])
    expect(drawn({ plus: 'laid' }).rows.some(({ about }) => about === 'bead/minus')).toBe(false)
  })

  it('brings its keep-outs with it, named and marked', () => {
    const { rows, shapes } = drawn({ minus: 'to-lay' })
    expect(rows.find(({ about }) => about === 'keep-out/minus/1')?.text).toBe(
      'oil way to the gallery: no sealant',
    )
    expect(shapes.some(({ kind, role }) => kind === 'text' && role === 'warning-label')).toBe(true)
  })
})
