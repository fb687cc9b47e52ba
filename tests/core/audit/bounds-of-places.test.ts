import { describe, expect, it } from 'vitest'
import { demoDraft, named, nth } from '../engine/demo.ts'
import { found } from './found.ts'

describe('the bounds of places', () => {
  it('one bore has no neighbour to run into', () => {
    const bored = (cylinders: number, bankAngle: string) =>
      found('bores-overlap', (spec) => Object.assign(spec.case, { cylinders, bankAngle, pitch: '80 mm' }))
    expect(bored(1, '0 °')).toEqual([])
    expect(bored(2, '0 °')).toHaveLength(1)
    expect(bored(2, '90 °')).toEqual([])
    expect(bored(3, '90 °')).toHaveLength(1)
    // A bank of one each, however narrow the V is.
    expect(bored(2, '1 °')).toEqual([])
  })

  it('bores may touch no more than meet', () => {
    expect(found('bores-overlap', (spec) => (spec.case.pitch = '84 mm'))).toHaveLength(1)
    expect(found('bores-overlap', (spec) => (spec.case.pitch = '84.1 mm'))).toEqual([])
  })

  it('a part is far out beyond four pitches across, and two pitches past the last saddles along', () => {
    const { pitch, saddles } = demoDraft('skerry-3').case
    const mm = (text: string) => Number.parseFloat(text)
    const across = 4 * mm(pitch)
    const last = Math.max(...saddles.map(({ at }) => mm(at))) + 2 * mm(pitch)
    const first = Math.min(...saddles.map(({ at }) => mm(at))) - 2 * mm(pitch)
    const moved = (x: number, y: number) =>
      found('far-outside', (spec) => (named(spec.fasteners, 'rod-1').at = [`${x} mm`, `${y} mm`])).length
    expect([moved(100, across), moved(100, -across), moved(last, 0), moved(first, 0)]).toEqual([0, 0, 0, 0])
    expect([
      moved(100, across + 0.1),
      moved(100, -across - 0.1),
      moved(last + 0.1, 0),
      moved(first - 0.1, 0),
    ]).toEqual([1, 1, 1, 1])
  })

  it('a bead may pass a bolt at half of both their widths', () => {
    // A bolt of the flange, M8 with a bead of 3 mm: their middles are 5.5 mm apart at least.
    const bead = named(demoDraft('skerry-3').beads, 'plus')
    const [[x], y] = [nth(bead.path, 0), Number.parseFloat(nth(bead.path, 0)[1])]
    const width = Number.parseFloat(bead.width)
    const along = `${Number.parseFloat(x) + 30} mm`
    const radius =
      Number.parseFloat(
        (named(demoDraft('skerry-3').fastenerGroups, 'flange-bolts').thread as { diameter: string }).diameter,
      ) / 2
    const passing = (apart: number) =>
      found('bead-over-hole', (spec) => {
        spec.beads = [named(spec.beads, 'plus')]
        nth(spec.beads, 0).path = [bead.path[0]!, [`${Number.parseFloat(x) + 60} mm`, `${y} mm`]]
        nth(spec.beads, 0).closed = false
        spec.fasteners = spec.fasteners.filter(({ id, face }) => face !== bead.face || id === 'flange-13')
        spec.case.dowels = []
        named(spec.fasteners, 'flange-13').at = [along, `${y + apart} mm`]
        spec.procedures = spec.procedures.filter(({ face }) => face !== bead.face)
        const runs = new Set(spec.procedures.map(({ id }) => id))
        spec.steps = spec.steps.filter((step) => step.kind !== 'run-procedure' || runs.has(step.procedure))
        spec.steps = spec.steps.filter((step) => step.kind !== 'lay-bead' || step.bead === 'plus')
        const ids = new Set(spec.steps.map(({ id }) => id))
        for (const step of spec.steps) step.after = (step.after ?? []).filter((each) => ids.has(each))
        for (const caution of spec.cautions) caution.steps = caution.steps?.filter((each) => ids.has(each))
      })
    expect(passing(radius + width / 2)).toEqual([])
    expect(passing(radius + width / 2 - 0.01)).toHaveLength(1)
  })
})
