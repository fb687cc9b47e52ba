import { fastenersOf, type Cap, type Procedure } from '../../engine/index.ts'
import { asRun } from '../order/own-order.ts'
import type { Pull, Run } from './run.ts'
import { isShort } from '../reading/short-turn.ts'

/**
 * One fastener in one pass that the procedure asks for. `pass` counts from 0; an action between passes has no
 * fastener, nor has the gap of the joint face that is measured once all are seated.
 */
export interface PlannedPull {
  readonly pass: number
  readonly fastener: string | null
  /** The cap that an action is about, where the procedure goes cap by cap. */
  readonly cap?: string | undefined
}

/**
 * Everything a procedure asks for, in the order in which it asks: pass by pass, or where it goes cap by cap all passes of one cap
 * before the next. A pass over an unknown order has nothing in it.
 */
export function plannedPulls(procedure: Procedure): readonly PlannedPull[] {
  const known = planned.get(procedure) ?? planAll(procedure)
  planned.set(procedure, known)
  return known
}

/** What `plannedPulls` found: a procedure never changes, and every pull asks. */
const planned = new WeakMap<Procedure, readonly PlannedPull[]>()

function planAll(procedure: Procedure): readonly PlannedPull[] {
  const inPasses = procedure.passes.map((_, pass) => plannedIn(procedure, pass))
  const { caps } = procedure
  if (caps === undefined) return inPasses.flat()
  return caps.flatMap(({ id, fasteners }) =>
    inPasses.flatMap((pulls) =>
      pulls.filter(({ fastener, cap }) => (fastener === null ? cap === id : fasteners.includes(fastener))),
    ),
  )
}

/** What one pass asks for, in order; nothing for a pass that is not there. What has no fastener is done once for each cap. */
export function plannedIn(procedure: Procedure, pass: number): readonly PlannedPull[] {
  const wanted = procedure.passes[pass]
  if (wanted === undefined) return []
  const { caps } = procedure
  const pulls = fastenersOf(procedure, wanted).map((fastener) => ({ pass, fastener }))
  const isMore = wanted.kind === 'action' || (wanted.kind === 'seat' && wanted.gap !== undefined)
  const more = caps?.map(({ id }) => ({ pass, fastener: null, cap: id })) ?? [{ pass, fastener: null }]
  return isMore ? [...pulls, ...more] : pulls
}

/** The cap of a procedure that goes cap by cap at which a pull is made; null in any other procedure. */
export function capOfPull({ caps }: Procedure, { fastener, cap }: Omit<PlannedPull, 'pass'>): Cap | null {
  const found = caps?.find(({ id, fasteners }) =>
    fastener === null ? id === cap : fasteners.includes(fastener),
  )
  return found ?? null
}

/** Whether a pull counts: it was neither taken back nor set aside. */
export function counts({ takenBack, setAside }: Pull): boolean {
  return takenBack === null && setAside === null
}

/** What `openPulls` found: a run never changes, and of the runs before it every confirmation asks whether they are done. */
const open = new WeakMap<Run, { readonly procedure: Procedure; readonly pulls: readonly PlannedPull[] }>()

/**
 * What is still to be pulled, in the procedure's order or the run's own: what was skipped by a pull out of
 * order comes first again.
 */
export function openPulls(procedure: Procedure, run: Run | undefined): readonly PlannedPull[] {
  if (run === undefined) return plannedPulls(procedure)
  const known = open.get(run)
  if (known?.procedure === procedure) return known.pulls
  const made = livePulls(run)
  const pulls = plannedPulls(asRun(procedure, run)).filter((planned) => !made.has(pullKey(planned)))
  open.set(run, { procedure, pulls })
  return pulls
}

/** Whose turn it is; null when everything has been pulled. */
export function nextPull(procedure: Procedure, run: Run | undefined): PlannedPull | null {
  return openPulls(procedure, run)[0] ?? null
}

/**
 * The pulls that count and are done with, by `pullKey`, in the order in which they were made. A turn that came short counts
 * and is not done: what is left of it is still to be turned.
 */
export function livePulls(run: Run | undefined): ReadonlyMap<string, Pull> {
  if (run === undefined) return new Map()
  const known = live.get(run)
  if (known !== undefined) return known
  const last = new Map(run.pulls.filter(counts).map((pull) => [pullKey(pull), pull]))
  for (const [key, pull] of last) if (isShort(run, pull)) last.delete(key)
  live.set(run, last)
  return last
}

/** What `livePulls` found: a run never changes. */
const live = new WeakMap<Run, ReadonlyMap<string, Pull>>()

/** The last pull that counts: the only one that can be taken back. */
export function lastLivePull(run: Run | undefined): Pull | null {
  return run?.pulls.findLast(counts) ?? null
}

/** Names one fastener in one pass, or what is done there without one. */
export function pullKey({
  pass,
  fastener,
  cap,
}: Omit<PlannedPull, 'cap'> & { readonly cap?: string | null | undefined }): string {
  // A bearing and a fastener may have the same id.
  return fastener === null && typeof cap === 'string' ? `${pass}//${cap}` : `${pass}/${fastener ?? ''}`
}
