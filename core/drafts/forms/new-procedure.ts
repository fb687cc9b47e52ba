import { refused, type Outcome } from '../../problem/index.ts'
import { grownOrder } from '../orders/index.ts'
import type { SpecDocument } from '../placing/index.ts'

type Procedure = SpecDocument['procedures'][number]
export type PassInDocument = Procedure['passes'][number]

/** A pass as it is before its values are typed: one with a value is aimed at what the pass before it has, or at what stands here. */
const firstTorque = '1 N·m'
const firstAngle = '90 °'
const firstLength = '0.1 mm'

export const passKinds = [
  'seat',
  'torque',
  'angle',
  'loosen',
  'recheck',
  'length',
  'stretch',
  'tighten-to-stretch',
  'action',
] as const satisfies readonly PassInDocument['kind'][]

/** A pass of a kind with the least that it needs. `instruction` is what an action says until somebody writes it. */
export function newPass(kind: PassInDocument['kind'], order: string, instruction: string): PassInDocument {
  switch (kind) {
    case 'seat':
    case 'loosen':
    case 'length':
      return { kind, order }
    case 'torque':
    case 'recheck':
      return { kind, order, target: firstTorque }
    case 'angle':
      return { kind, order, target: firstAngle }
    case 'stretch':
      return { kind, order, least: firstLength, most: firstLength }
    case 'tighten-to-stretch':
      return {
        ...{ kind, order, least: firstLength, most: firstLength },
        torque: { least: firstTorque, most: firstTorque },
      }
    case 'action':
      return { kind, instruction }
    default:
      return kind satisfies never
  }
}

/**
 * A tightening procedure over all fasteners of a face, from the middle outwards until somebody taps the manual's order, with a
 * pass by hand. Refuses `draft-face-without-fasteners`.
 */
export function withProcedure(
  document: SpecDocument,
  face: string,
  name: Procedure['name'],
): Outcome<SpecDocument> {
  const fasteners = document.fasteners.flatMap((each) => (each.face === face ? [each.id] : []))
  if (fasteners.length === 0) return refused('draft-face-without-fasteners', { face })
  const taken = new Set(document.procedures.map(({ id }) => id))
  let id = face.slice(0, 36)
  for (let more = 2; taken.has(id); more += 1) id = `${face.slice(0, 36)}-${more}`
  const order = { id: 'order', sequence: fasteners }
  const procedure: Procedure = {
    ...{ id, name, face, orders: [order] },
    passes: [{ kind: 'seat', order: order.id }],
  }
  const added = { ...document, procedures: [...document.procedures, procedure] }
  return grownOrder(added, { procedure: id, order: order.id }, 'centre-out', fasteners)
}

/** Changes a pass to another kind: what both have stays. */
export function passAs(
  pass: PassInDocument,
  kind: PassInDocument['kind'],
  order: string,
  instruction: string,
): PassInDocument {
  const fresh = newPass(kind, 'order' in pass ? pass.order : order, instruction)
  const isTorque = (each: PassInDocument) => each.kind === 'torque' || each.kind === 'recheck'
  if (isTorque(pass) && isTorque(fresh)) {
    const { inSteps: _, ...kept } = pass as Extract<PassInDocument, { kind: 'torque' }>
    return { ...kept, kind: fresh.kind } as PassInDocument
  }
  const note = 'note' in pass ? pass.note : undefined
  return note === undefined || fresh.kind === 'action' ? fresh : { ...fresh, note }
}
