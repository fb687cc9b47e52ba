import { describe, expect, it } from 'vitest'
import { documentIn, drawnDifferences, type OpenDocument } from '../../../core/drafts/index.ts'
import { demoText } from '../engine/demo.ts'

/** What a change of a demo is on its drawings: the face, the thing, and how it differs. */
function after(change: (document: OpenDocument) => void): readonly string[] {
  const [before, changed] = [documentIn(demoText('skerry-3')), documentIn(demoText('skerry-3'))]
  change(changed)
  return drawnDifferences(before, changed).map(({ face, about, how }) => `${face}: ${about} ${how}`)
}
const bolt = (document: OpenDocument) => document.fasteners.find(({ id }) => id === 'case-1')!

describe('two revisions on the drawing', () => {
  it('differ in nothing where places and sizes are the same, whatever else is', () => {
    expect(after((document) => void (document.summary = 'Another'))).toEqual([])
    expect(after((document) => void (document.procedures[0]!.passes = []))).toEqual([])
  })

  it('differ in a bolt that moved, and in one that has another number', () => {
    expect(after((document) => void (bolt(document).at[0] = '47 mm'))).toEqual([
      'joint: fastener/case-1 moved',
    ])
    expect(after((document) => void (bolt(document).number = '77'))).toEqual([
      'joint: fastener/case-1 changed',
    ])
  })

  it('have one that went to another face gone here and new there', () => {
    expect(after((document) => void (bolt(document).face = 'sump'))).toEqual([
      'joint: fastener/case-1 gone',
      'sump: fastener/case-1 added',
    ])
  })

  it('differ in a dowel that is gone, one that came, and the outline of a face', () => {
    const found = after((document) => {
      const [first, ...others] = document.case.dowels!
      document.case.dowels = [...others, { ...first!, id: 'extra', at: ['300 mm', '0 mm'] }]
      const face = document.case.faces.find(({ id }) => id === first!.face)!
      face.outline = [...(face.outline ?? []), ['500 mm', '0 mm']] as never
    })
    expect(found.toSorted()).toEqual([
      'joint: dowel/dowel-1 gone',
      'joint: dowel/extra added',
      'joint: face/joint moved',
    ])
  })
})
