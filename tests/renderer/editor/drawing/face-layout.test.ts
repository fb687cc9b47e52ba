import { describe, expect, it } from 'vitest'
import { rememberingAudit } from '../../../../core/audit/index.ts'
import { documentIn, moved } from '../../../../core/drafts/index.ts'
import { readDocument, type SpecDocument } from '../../../../core/engine/index.ts'
import { en } from '../../../../core/words/index.ts'
import { faceLayout } from '../../../../renderer/editor/drawing/face-layout.ts'
import { specOfMany } from '../../../bench/press/spec.ts'

const audit = rememberingAudit()
function read(document: SpecDocument) {
  const reading = readDocument(document)
  if (!reading.ok) throw new Error(reading.problems[0]!.code)
  return { document, spec: reading.spec, findings: audit(reading.spec) }
}
const before = read(documentIn(specOfMany(40)))
const after = read(
  (() => {
    const made = moved(before.document, [{ kind: 'fastener', id: 'f30' }], { x: 20e6, y: 0 })
    if (!made.ok) throw new Error(made.problem.code)
    return made.value
  })(),
)
const asked = {
  ...{ words: en, face: 'sump', sequence: null, group: null },
  ...{ widthPx: 900, heightPx: 600, capitalPx: 12 },
}

describe('a face that is laid out ahead', () => {
  it('is that very one when it is shown, and what it would be without', () => {
    const layOut = faceLayout()
    layOut(before, asked)
    const ahead = layOut(after, asked)
    expect(layOut(after, asked)).toBe(ahead)
    expect(ahead.scene).toEqual(faceLayout()(after, asked).scene)
    expect(ahead.scene).not.toEqual(faceLayout()(before, asked).scene)
  })

  it('is left where something else is asked for after all', () => {
    const layOut = faceLayout()
    const refused = layOut(after, asked)
    expect(layOut(before, asked).scene).toEqual(faceLayout()(before, asked).scene)
    const tapped = { ...asked, sequence: ['f30', 'f1'] }
    const inOrder = layOut(after, tapped)
    expect(inOrder).not.toBe(refused)
    expect(inOrder.scene.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))).toEqual(
      expect.arrayContaining(['1', '2', '·']),
    )
  })
})
