import { done, refused, type Outcome } from '../../problem/index.ts'
import { nameInSpec, type SpecDocument } from '../../engine/index.ts'
import { withoutBearings } from './bearings.ts'
import { listOf, withList } from './listed.ts'
import { withoutPoints } from './paths.ts'
import { isBearing, isListed, type Thing, type ThingKind } from './thing.ts'
import { called } from './things.ts'

type Procedure = SpecDocument['procedures'][number]
type Pass = Procedure['passes'][number]

/** What goes with fasteners that are taken out: places in orders, and in values that hold for some of them. */
export interface Losses {
  readonly orders: readonly { readonly procedure: string; readonly order: string; readonly count: number }[]
  /** Passes, counted from 1, in which some of them have a value of their own or are the only ones. */
  readonly passes: readonly { readonly procedure: string; readonly pass: number }[]
}

/** What a document would lose with things, to be said before they are taken out. */
export function lossesWith(document: SpecDocument, things: readonly Thing[]): Losses {
  const gone = fastenersAmong(things)
  return {
    orders: document.procedures.flatMap(({ id, orders }) =>
      orders.flatMap((order) => {
        const count = order.sequence.filter((each) => gone.has(each)).length
        return count === 0 ? [] : [{ procedure: id, order: order.id, count }]
      }),
    ),
    passes: document.procedures.flatMap(({ id, passes }) =>
      passes.flatMap((pass, index) =>
        namedIn(pass).some((each) => gone.has(each)) ? [{ procedure: id, pass: index + 1 }] : [],
      ),
    ),
  }
}

/**
 * Takes things out with what refers to them. Refuses `draft-order-left-empty` where an order would have no fastener any more, and
 * `draft-thing-in-step` for a part of a face that a step works on.
 */
export function removed(document: SpecDocument, things: readonly Thing[]): Outcome<SpecDocument> {
  const gone = fastenersAmong(things)
  for (const procedure of document.procedures)
    for (const order of procedure.orders)
      if (order.sequence.every((each) => gone.has(each)))
        return leftEmpty(document, { procedure: procedure.id, order: order.id })
  const inStep = things.find((thing) => thing.kind === 'face-part' && stepWith(document, thing.id))
  if (inStep !== undefined) {
    const step = stepWith(document, inStep.id)!
    return refused('draft-thing-in-step', { what: called(document, inStep), step: nameInSpec(step.name) })
  }
  const without = kindsAmong(things).reduce((changed, kind) => {
    const ids = new Set(things.flatMap((thing) => (thing.kind === kind ? [thing.id] : [])))
    if (isBearing(kind)) return withoutBearings(changed, kind, ids)
    if (!isListed(kind)) return withoutPoints(changed, kind, ids)
    return withList(
      changed,
      kind,
      listOf(changed, kind).filter(({ id }) => !ids.has(id)),
    )
  }, document)
  if (gone.size === 0) return done(without)
  return done({ ...without, procedures: without.procedures.map((each) => procedureWithout(each, gone)) })
}

/** Refuses `draft-order-left-empty`; an order without a name is called by its place among the orders. */
export function leftEmpty(
  { procedures }: SpecDocument,
  { procedure, order }: { readonly procedure: string; readonly order: string },
): Outcome<never> {
  const { name, orders = [] } = procedures.find(({ id }) => id === procedure) ?? {}
  const at = orders.findIndex(({ id }) => id === order)
  return refused('draft-order-left-empty', {
    order: nameInSpec(orders[at]?.name, String(at + 1)),
    procedure: nameInSpec(name),
  })
}

function fastenersAmong(things: readonly Thing[]): ReadonlySet<string> {
  return new Set(things.flatMap(({ kind, id }) => (kind === 'fastener' ? [id] : [])))
}

function kindsAmong(things: readonly Thing[]): readonly ThingKind[] {
  return [...new Set(things.map(({ kind }) => kind))]
}

function stepWith({ steps }: SpecDocument, facePart: string) {
  return steps.find(
    (step) =>
      'places' in step && step.places.some((place) => 'facePart' in place && place.facePart === facePart),
  )
}

function namedIn(pass: Pass): readonly string[] {
  const others = 'others' in pass ? (pass.others ?? []) : []
  const only = pass.kind === 'recheck' ? (pass.only ?? []) : []
  return [...others.flatMap(({ fasteners }) => fasteners), ...only]
}

function procedureWithout(procedure: Procedure, gone: ReadonlySet<string>): Procedure {
  const left = (ids: readonly string[]) => ids.filter((id) => !gone.has(id))
  return {
    ...procedure,
    orders: procedure.orders.map((order) => ({ ...order, sequence: left(order.sequence) })),
    passes: procedure.passes.map((pass) => passWithout(pass, left)),
  }
}

/** A value that held for fasteners of which none is left goes; a recheck of none of them is one of all. */
function passWithout(pass: Pass, left: (ids: readonly string[]) => string[]): Pass {
  if (pass.kind !== 'torque' && pass.kind !== 'angle' && pass.kind !== 'recheck') return pass
  const others = pass.others
    ?.map((other) => ({ ...other, fasteners: left(other.fasteners) }))
    .filter(({ fasteners }) => fasteners.length > 0)
  const { others: _, ...rest } = pass
  const kept = { ...rest, ...(others !== undefined && others.length > 0 && { others }) } as Pass
  if (kept.kind !== 'recheck' || kept.only === undefined) return kept
  const { only, ...without } = kept
  const some = left(only)
  return some.length > 0 ? { ...without, only: some } : without
}
