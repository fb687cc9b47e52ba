import { describe, expect, it } from 'vitest'
import { readDocument, type SpecDocument } from '../../../../core/engine/index.ts'
import {
  isInAnotherUnit,
  printedText,
  printedTorque,
  printedTorques,
} from '../../../../core/tightening/index.ts'
import { en } from '../../../../core/words/index.ts'
import { documentOf } from '../../drafts/document-of-demo.ts'

const fen = documentOf('fen-1')
const [joint] = fen.procedures
const [order] = joint!.orders
const [first, second] = order!.sequence

type Passes = SpecDocument['procedures'][number]['passes']

/** A case joint whose passes are printed so. */
function printedAs(passes: Passes) {
  const document = { ...fen, procedures: [{ ...joint!, passes }, ...fen.procedures.slice(1)] }
  const read = readDocument(document)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return { document, procedure: read.spec.procedures[0]! }
}

describe('a torque as the manual prints it', () => {
  it('is the text of the spec, with both of its units, and that of a fastener which has its own', () => {
    const { document, procedure } = printedAs([
      { kind: 'seat', order: order!.id },
      {
        kind: 'torque',
        order: order!.id,
        target: '75 lbf·ft (102 N·m)',
        others: [{ fasteners: [second!], least: '60 lbf·ft', most: '65 lbf·ft' }],
      },
    ])
    expect(printedTorque(document, procedure, 0, first!)).toBeNull()
    expect(printedTorque(document, procedure, 1, first!)).toEqual({ target: '75 lbf·ft (102 N·m)' })
    expect(printedText(en, [printedTorque(document, procedure, 1, second!)!])).toBe(
      'In the manual: 60 lbf·ft to 65 lbf·ft',
    )
    expect(printedText(en, printedTorques(document, procedure, 1))).toBe(
      'In the manual: 75 lbf·ft (102 N·m); 60 lbf·ft to 65 lbf·ft',
    )
  })

  it('is that of the last one of a pass in steps, counted on through the passes behind it', () => {
    const { document, procedure } = printedAs([
      { kind: 'torque', order: order!.id, target: '150 lbf·ft', inSteps: '50 lbf·ft' },
      { kind: 'torque', order: order!.id, target: '170 lbf·ft' },
    ])
    expect(procedure.passes).toHaveLength(4)
    const printed = procedure.passes.map(
      (_, pass) => printedTorque(document, procedure, pass, first!)?.target,
    )
    expect(printed).toEqual([undefined, undefined, '150 lbf·ft', '170 lbf·ft'])
  })

  it.each([
    ['75 lbf·ft', 'N·m', true],
    ['75 ft-lb', 'lbf·ft', false],
    ['75 lbf·ft (102 N·m)', 'lbf·ft', true],
    ['24 Nm', 'N·m', false],
    ['24 N·m', 'lbf·in', true],
  ] as const)('%s is shown beside a value in %s: %s', (target, unit, is) => {
    expect(isInAnotherUnit({ target }, unit)).toBe(is)
  })
})
