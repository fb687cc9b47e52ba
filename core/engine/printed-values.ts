import type { z } from 'zod'
import { degrees, newtonMetres, type Angle, type Torque } from '../quantity/index.ts'
import { advise } from './advice.ts'

interface TorqueValue {
  readonly target?: Torque | undefined
  readonly least?: Torque | undefined
  readonly most?: Torque | undefined
}

/** A torque that a manual gives as a range, `150 to 160`, aims at its middle. */
export function withTarget<Value extends TorqueValue>(
  value: Value,
  context: z.RefinementCtx,
): Value & { target: Torque } {
  const { target, least, most } = value
  if (target !== undefined) return { ...value, target }
  if (least !== undefined && most !== undefined) return { ...value, target: newtonMetres((least + most) / 2) }
  context.addIssue({
    code: 'custom',
    path: ['target'],
    message: advise('torque-or-range'),
  })
  return { ...value, target: newtonMetres(1) }
}

interface AngleValue {
  readonly target?: Angle | undefined
  readonly inAll?: Angle | undefined
  readonly others?: readonly unknown[] | undefined
}

/** An angle pass says how far it turns, or how far it is then turned in all: not both, and in all alike for all of them. */
export function eitherAngle(value: AngleValue, context: z.RefinementCtx): void {
  if ((value.target === undefined) === (value.inAll === undefined))
    context.addIssue({
      code: 'custom',
      path: ['target'],
      message: advise('turn-or-in-all'),
    })
  if (value.inAll !== undefined && value.others !== undefined)
    context.addIssue({
      code: 'custom',
      path: ['others'],
      message: advise('others-with-in-all'),
    })
}

interface RawPass {
  readonly kind: string
  readonly order?: string | undefined
  /** Of an angle pass in degrees. */
  readonly target?: number | undefined
  readonly inAll?: number | undefined
  readonly others?: readonly { readonly fasteners: readonly string[]; readonly target: number }[] | undefined
}

interface RawProcedure {
  readonly orders: readonly { readonly id: string; readonly sequence: readonly string[] }[]
  readonly passes: readonly RawPass[]
}

/**
 * How far each pass turns that says how far its fasteners are turned in all: that less what the angle passes since their last torque
 * turned them. By pass, counted from 0, what was turned before; null where it is not alike for all of them, or is as much already.
 */
export function turnedBefore({ orders, passes }: RawProcedure): ReadonlyMap<number, Angle | null> {
  const turned = new Map<string, number>()
  const found = new Map<number, Angle | null>()
  passes.forEach((pass, index) => {
    const sequence = orders.find(({ id }) => id === pass.order)?.sequence ?? []
    if (pass.kind === 'torque' || pass.kind === 'tighten-to-stretch' || pass.kind === 'loosen')
      for (const id of sequence) turned.set(id, 0)
    if (pass.kind !== 'angle') return
    if (pass.inAll !== undefined) {
      const before = new Set(sequence.map((id) => turned.get(id) ?? 0))
      const [only = 0] = before
      found.set(index, before.size > 1 || only >= pass.inAll ? null : degrees(only))
    }
    for (const id of sequence) turned.set(id, pass.inAll ?? (turned.get(id) ?? 0) + angleOf(pass, id))
  })
  return found
}

function angleOf({ target, others = [] }: RawPass, fastener: string): number {
  return others.find(({ fasteners }) => fasteners.includes(fastener))?.target ?? target ?? 0
}
