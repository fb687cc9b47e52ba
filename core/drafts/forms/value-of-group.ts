import type { SpecDocument } from '../../engine/index.ts'
import { printedValue } from './printed-value.ts'
import { inUnitOf } from './unit-of-value.ts'
import type { PassInDocument } from './new-pass.ts'

type Procedure = SpecDocument['procedures'][number]
type ValuedPass = Extract<PassInDocument, { readonly kind: 'torque' | 'angle' | 'recheck' }>

/** The fasteners of one group in the order of a pass. */
export interface GroupInPass {
  readonly group: string
  readonly fasteners: readonly string[]
}

/** The groups that a pass comes to, in the order in which it first comes to each. */
export function groupsInPass(
  { fasteners }: SpecDocument,
  { orders }: Procedure,
  pass: PassInDocument,
): readonly GroupInPass[] {
  if (!('order' in pass)) return []
  const groupOf = new Map(fasteners.map(({ id, group }) => [id, group]))
  const found = new Map<string, string[]>()
  for (const id of orders.find((order) => order.id === pass.order)?.sequence ?? []) {
    const group = groupOf.get(id)
    if (group !== undefined) found.set(group, [...(found.get(group) ?? []), id])
  }
  return [...found].map(([group, ids]) => ({ group, fasteners: ids }))
}

/** The value that all fasteners of a group have for themselves in a pass; empty where it is the value of the pass. */
export function valueOfGroup(pass: ValuedPass, { fasteners }: GroupInPass): string {
  const own = pass.others?.find((other) => fasteners.every((id) => other.fasteners.includes(id)))
  const { target, least, most } = own ?? {}
  return target ?? (least !== undefined && most !== undefined ? `${least} – ${most}` : '')
}

/** A pass with another value for the fasteners of a group, as it is typed, with its limits; empty for that of the pass. */
export function withValueOfGroup(
  pass: ValuedPass,
  { fasteners }: GroupInPass,
  typed: string,
): PassInDocument {
  const left = (pass.others ?? [])
    .map((other) => ({ ...other, fasteners: other.fasteners.filter((id) => !fasteners.includes(id)) }))
    .filter((other) => other.fasteners.length > 0)
  const { target, least, most } = printedValue(typed)
  const own =
    typed.trim() === ''
      ? []
      : [
          {
            fasteners: [...fasteners],
            ...(target !== undefined && { target: inUnitOf(target, pass.target ?? '') }),
            ...(least !== undefined && { least }),
            ...(most !== undefined && { most }),
          },
        ]
  const { others: _, ...rest } = pass
  const others = [...left, ...own]
  return { ...rest, ...(others.length > 0 && { others }) } as PassInDocument
}
