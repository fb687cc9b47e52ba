import { describe, expect, it } from 'vitest'
import type { Face } from '../../../core/engine/index.ts'
import { DrawingTable } from '../../../renderer/bench/drawing-table.svelte.ts'
import type { FaceViews } from '../../../renderer/bench/kept-by-build.ts'

const joint: Face = { id: 'joint', name: 'Case joint', shows: 'saddles', plane: 'plan', workedFrom: 'below' }

function tableOn(views: FaceViews = {}) {
  const kept: FaceViews[] = []
  const table = new DrawingTable({
    face: () => joint,
    views,
    handle: null,
    onlook: (now) => kept.push(now),
    letterKeys: () => true,
  })
  return { table, kept }
}

describe('how a face lies on the table', () => {
  it('is the way it is worked on, nose left, until somebody turns it', () => {
    const { table, kept } = tableOn()
    expect(table.view).toEqual({ from: 'below', turn: 0 })
    expect(table.nose).toBe('left')
    expect(kept).toEqual([])
  })

  it('is the way it was left', () => {
    const { table } = tableOn({ joint: { from: 'above', turn: 3 } })
    expect(table.view).toEqual({ from: 'above', turn: 3 })
  })

  it('is told to be kept with every flip and turn, beside that of the other faces', () => {
    const { table, kept } = tableOn({ sump: { from: 'below', turn: 1 } })
    table.flip()
    table.pointNose('bottom')
    expect(kept.at(-1)).toEqual({
      sump: { from: 'below', turn: 1 },
      joint: { from: 'above', turn: 3 },
    })
    expect(table.nose).toBe('bottom')
  })

  it('follows how the engine is said to lie', () => {
    const { table } = tableOn()
    table.orient('upright')
    expect(table.view).toEqual({ from: 'above', turn: 0 })
    table.orient('on-plus')
    expect(table.view).toEqual({ from: 'above', turn: 2 })
  })
})
