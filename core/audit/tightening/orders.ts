import {
  fastenersOf,
  writtenAt,
  type EngineSpec,
  type Fastener,
  type Order,
  type Pass,
  type Procedure,
} from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'

/**
 * Whether every fastener comes once and once only in each order of a full pass. A full pass is any but a recheck, which
 * may be of some. A group counts as a whole on one face: who touches one of it touches all of it, be it in several passes
 * over some each (caps 1, 3 and 5 before the others), so long as all of them go through as many of each kind.
 */
export function auditOrders(spec: EngineSpec): readonly Finding[] {
  const fasteners = new Map(spec.fasteners.map((each) => [each.id, each]))
  return [
    ...spec.procedures.flatMap((procedure, i) => {
      const path = `procedures[${i}]`
      return [
        ...procedure.orders.flatMap((order, k) =>
          auditOrder(spec, procedure, order, fasteners, `${path}.orders[${k}]`),
        ),
        ...procedure.passes.flatMap((pass, k) => [
          ...auditOwnValues(
            procedure,
            pass,
            k,
            fasteners,
            `${path}.passes[${writtenAt(procedure.passes, k)}]`,
          ),
          ...auditOnly(procedure, pass, k, fasteners, `${path}.passes[${writtenAt(procedure.passes, k)}]`),
        ]),
      ]
    }),
    ...neverTightened(spec, fasteners),
    ...sameNumbers(spec),
  ]
}

function auditOrder(
  spec: EngineSpec,
  procedure: Procedure,
  order: Order,
  fasteners: ReadonlyMap<string, Fastener>,
  path: string,
): readonly Finding[] {
  const passes = procedure.passes.filter((pass) => pass.kind !== 'action' && pass.order === order.id)
  const common = { procedure: procedure.name, order: order.name ?? order.id }
  const inOrder = new Set(order.sequence)
  const listed = [...inOrder].flatMap((id) => fasteners.get(id) ?? [])
  const findings: Finding[] = []

  const seen = new Set<string>()
  const repeated = order.sequence.filter((id) => seen.size === seen.add(id).size)
  if (repeated.length > 0)
    findings.push(
      fault(
        'order-repeats',
        { ...common, numbers: numbersOf([...new Set(repeated)], fasteners) },
        `${path}.sequence`,
      ),
    )

  const elsewhere = listed.filter(({ face }) => face !== procedure.face)
  if (elsewhere.length > 0) {
    const face = nameOfFace(spec, procedure.face)
    const numbers = elsewhere.map(({ number }) => number)
    findings.push(fault('order-of-other-face', { ...common, numbers, face }, `${path}.sequence`))
  }

  if (passes.length === 0) findings.push(doubt('order-unused', common, path))
  if (passes.every(({ kind }) => kind === 'recheck')) return findings
  for (const group of spec.fastenerGroups) {
    const all = spec.fasteners.filter((each) => each.group === group.id && each.face === procedure.face)
    const missing = all.filter(({ id }) => !inOrder.has(id))
    if (missing.length === 0 || missing.length === all.length) continue
    if (areTreatedAlike(procedure, all)) continue
    const numbers = missing.map(({ number }) => number)
    findings.push(fault('order-misses', { ...common, group: group.name, numbers }, `${path}.sequence`))
  }
  return findings
}

/** Whether all of these go through as many passes of each kind, whichever order takes them there. */
function areTreatedAlike(procedure: Procedure, fasteners: readonly Fastener[]): boolean {
  const kindsOf = (id: string) =>
    procedure.passes
      .filter((pass) => pass.kind !== 'recheck' && fastenersOf(procedure, pass).includes(id))
      .map(({ kind }) => kind)
      .toSorted()
      .join()
  return new Set(fasteners.map(({ id }) => kindsOf(id))).size === 1
}

/** Values for some fasteners of a pass: each fastener in the pass, and in one of the lists only. */
function auditOwnValues(
  procedure: Procedure,
  pass: Pass,
  index: number,
  fasteners: ReadonlyMap<string, Fastener>,
  path: string,
): readonly Finding[] {
  if (pass.kind !== 'torque' && pass.kind !== 'recheck' && pass.kind !== 'angle') return []
  const sequence = fastenersOf(procedure, pass)
  const orderedFasteners = (pass.others ?? []).flatMap((other) => other.fasteners)
  const common = { procedure: procedure.name, pass: index + 1 }
  const outside = orderedFasteners.filter((id) => !sequence.includes(id))
  const twice = new Set(orderedFasteners.filter((id, at) => orderedFasteners.indexOf(id) !== at))
  return [
    ...(outside.length > 0
      ? [
          fault(
            'value-outside-order',
            { ...common, numbers: numbersOf(outside, fasteners) },
            `${path}.others`,
          ),
        ]
      : []),
    ...(twice.size > 0
      ? [
          fault(
            'value-given-twice',
            { ...common, numbers: numbersOf([...twice], fasteners) },
            `${path}.others`,
          ),
        ]
      : []),
  ]
}

/** A recheck of some is of some that its order has. */
function auditOnly(
  procedure: Procedure,
  pass: Pass,
  index: number,
  fasteners: ReadonlyMap<string, Fastener>,
  path: string,
): readonly Finding[] {
  if (pass.kind !== 'recheck') return []
  const sequence = procedure.orders.find(({ id }) => id === pass.order)?.sequence ?? []
  const outside = (pass.only ?? []).filter((id) => !sequence.includes(id))
  if (outside.length === 0) return []
  const facts = { procedure: procedure.name, pass: index + 1, numbers: numbersOf(outside, fasteners) }
  return [fault('recheck-outside-order', facts, `${path}.only`)]
}

/** Groups of which no fastener on a face is in any procedure; where some are, `order-misses` speaks. */
function neverTightened(spec: EngineSpec, fasteners: ReadonlyMap<string, Fastener>): readonly Finding[] {
  const key = ({ group, face }: Fastener): string => `${group} ${face}`
  const touched = new Set(
    spec.procedures
      .flatMap(({ orders }) => orders.flatMap(({ sequence }) => sequence))
      .flatMap((id) => fasteners.get(id) ?? [])
      .map(key),
  )
  const left = new Map<string, Fastener[]>()
  for (const each of spec.fasteners)
    if (!touched.has(key(each))) left.set(key(each), [...(left.get(key(each)) ?? []), each])
  return [...left.values()].flatMap(([first, ...others]) => {
    if (first === undefined) return []
    const group = spec.fastenerGroups.find(({ id }) => id === first.group)?.name ?? first.group
    const facts = { group, face: nameOfFace(spec, first.face), count: 1 + others.length }
    return [fault('group-never-tightened', facts, `fasteners[${spec.fasteners.indexOf(first)}]`)]
  })
}

function sameNumbers(spec: EngineSpec): readonly Finding[] {
  const seen = new Set<string>()
  return spec.fasteners.flatMap(({ face, number }, index) => {
    if (seen.size !== seen.add(`${face} ${number}`).size) return []
    return [fault('number-twice', { number, face: nameOfFace(spec, face) }, `fasteners[${index}].number`)]
  })
}

export function nameOfFace(spec: EngineSpec, id: string): string {
  return spec.case.faces.find((face) => face.id === id)?.name ?? id
}

function numbersOf(ids: readonly string[], fasteners: ReadonlyMap<string, Fastener>): readonly string[] {
  return ids.map((id) => fasteners.get(id)?.number ?? id)
}
