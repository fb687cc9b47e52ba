import type { EngineSpec, Pass, Procedure } from '../../engine/index.ts'
import { plannedIn, plannedPulls, windowOf, type PlannedPull } from '../../tightening/index.ts'
import { Chance } from '../chance.ts'

/** What comes after a pass: another pass, counted from 0, or null where the procedure is done. */
export type AfterPass = number | null

/**
 * One pass of a procedure to be gone through on a drawing without numbers, and what comes after it: where the procedure goes cap
 * by cap, that pass at one cap.
 */
export interface OrderDrill {
  readonly procedure: Procedure
  /** Counts from 0. */
  readonly pass: number
  /** The bearing of that cap; null where the procedure goes pass by pass. */
  readonly cap: string | null
  /** What counts as pulled in this pass before the drill begins. */
  readonly before: readonly string[]
  /** What is asked for of the rest of the pass, in its order. At least one. */
  readonly key: readonly string[]
  /** Null where the drill ends before the pass does. No two of the choices ask for the same. */
  readonly after: { readonly key: AfterPass; readonly choices: readonly AfterPass[] } | null
}

/** More than this is no drill of a few minutes: of a longer pass a part is asked for. */
const mostAsked = 16
const mostChoices = 4

/** Null where the engine has no pass over fasteners. */
export function orderDrill(spec: EngineSpec, seed: string): OrderDrill | null {
  const chance = new Chance(seed)
  const rounds = spec.procedures.flatMap(roundsOf)
  if (rounds.length === 0) return null
  const { procedure, pass, cap, earlier, all, next } = chance.one(rounds)
  const from = chance.below(Math.max(0, all.length - mostAsked) + 1)
  const key = all.slice(from, from + mostAsked)
  return {
    ...{ procedure, pass, cap, key },
    before: [...earlier, ...all.slice(0, from)],
    after:
      from + key.length < all.length ? null : { key: next, choices: choicesFor(procedure, next, chance) },
  }
}

/** What is pulled in one go: a pass, or one cap in a pass where the procedure goes cap by cap. */
interface PullRound {
  readonly procedure: Procedure
  readonly pass: number
  readonly cap: string | null
  /** Fasteners of the pass that are pulled before these. */
  readonly earlier: readonly string[]
  readonly all: readonly string[]
  readonly next: AfterPass
}

function roundsOf(procedure: Procedure): readonly PullRound[] {
  const planned = plannedPulls(procedure)
  return [...procedure.passes.keys()].flatMap((pass): readonly PullRound[] => {
    const inPass = pulledIn(procedure, pass)
    if (inPass.length === 0) return []
    if (procedure.caps === undefined) {
      const next = pass + 1 < procedure.passes.length ? pass + 1 : null
      return [{ procedure, pass, cap: null, earlier: [], all: inPass, next }]
    }
    return procedure.caps.flatMap(({ id, fasteners }, index) => {
      const done = procedure.caps!.slice(0, index).flatMap((cap) => cap.fasteners)
      const all = inPass.filter((each) => fasteners.includes(each))
      if (all.length === 0) return []
      const ends = planned.findLastIndex((each) => each.pass === pass && isAtCap(each, id, fasteners))
      const next = planned[ends + 1]?.pass ?? null
      return [{ procedure, pass, cap: id, earlier: inPass.filter((each) => done.includes(each)), all, next }]
    })
  })
}

function isAtCap({ fastener, cap }: PlannedPull, id: string, fasteners: readonly string[]): boolean {
  return fastener === null ? cap === id : fasteners.includes(fastener)
}

/** The fasteners of a pass, in its order. */
export function pulledIn(procedure: Procedure, pass: number): readonly string[] {
  return plannedIn(procedure, pass).flatMap(({ fastener }) => (fastener === null ? [] : [fastener]))
}

function choicesFor(procedure: Procedure, next: AfterPass, chance: Chance): readonly AfterPass[] {
  const asks = (pass: AfterPass) => (pass === null ? '' : asksFor(procedure.passes[pass]!))
  const seen = new Set([asks(next)])
  const others = chance
    .shuffled<AfterPass>([null, ...procedure.passes.keys()])
    .filter((pass) => !seen.has(asks(pass)) && seen.add(asks(pass)))
  return chance.shuffled([next, ...others.slice(0, mostChoices - 1)])
}

/** What a pass asks for, as far as its name and values say it. */
function asksFor(pass: Pass): string {
  if (pass.kind === 'action') return pass.instruction
  return JSON.stringify([pass.kind, windowOf(pass, null), pass.kind === 'recheck' ? pass.only : null])
}
