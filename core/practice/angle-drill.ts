import type { EngineSpec, Procedure } from '../engine/index.ts'
import { degrees, type Angle } from '../quantity/index.ts'
import { plannedIn, verdictOf, windowOf, type AcceptanceWindow, type Grip } from '../tightening/index.ts'
import { Chance } from './chance.ts'

type AngleWindow = Extract<AcceptanceWindow, { readonly kind: 'angle' }>

/** A turn to be judged by eye: where the handle starts, and what room it has. */
export interface AngleDrill {
  readonly procedure: Procedure
  /** Counts from 0. */
  readonly pass: number
  /** At least one. */
  readonly turns: readonly AngleTurn[]
}

export interface AngleTurn {
  readonly fastener: string
  readonly window: AngleWindow
  /** Where the handle stands at first, in whole degrees clockwise from straight up. */
  readonly start: Angle
  /** How far it can swing from there, in degrees; null where nothing is in its way. */
  readonly room: number | null
  readonly grip: Grip
}

const mostTurns = 3
const rooms = [null, 65, 75, 90, 130] as const

/** Null where no pass of the engine turns by an angle. */
export function angleDrill(spec: EngineSpec, seed: string): AngleDrill | null {
  const chance = new Chance(seed)
  const passes = spec.procedures.flatMap((procedure) =>
    [...procedure.passes.keys()].flatMap((pass) =>
      turnsIn(procedure, pass).length > 0 ? [{ procedure, pass }] : [],
    ),
  )
  if (passes.length === 0) return null
  const { procedure, pass } = chance.one(passes)
  const turns = chance.shuffled(turnsIn(procedure, pass)).slice(0, mostTurns)
  return {
    ...{ procedure, pass },
    turns: turns.map(({ fastener, window }) => ({
      ...{ fastener, window, start: degrees(chance.below(360)) },
      room: chance.one(rooms),
      grip: chance.one(['ratchet', 'hexagon', 'bi-hexagon'] as const),
    })),
  }
}

function turnsIn(procedure: Procedure, pass: number) {
  const wanted = procedure.passes[pass]!
  return plannedIn(procedure, pass).flatMap(({ fastener }) => {
    const window = fastener === null ? null : windowOf(wanted, fastener)
    return fastener !== null && window?.kind === 'angle' && window.target > 0 ? [{ fastener, window }] : []
  })
}

/** How a handle stands: how far from its start, and how far the fastener has been turned in all. Degrees. */
export interface HandlePlace {
  readonly off: number
  readonly turned: number
  /** Where `off` was when the handle was gripped last: it cannot be turned back past that. */
  readonly grippedAt: number
}

export const handleAtStart: HandlePlace = { off: 0, turned: 0, grippedAt: 0 }

/** More than this is no turn of the trade. */
const mostTurned = 720

/** The handle swung on, or back where `by` is below 0: as far as there is room, and back no further than it was gripped. */
export function swung({ room }: AngleTurn, place: HandlePlace, by: number): HandlePlace {
  const mostSwing = Math.min(room ?? Infinity, place.off + mostTurned - place.turned)
  const off = Math.min(Math.max(place.off + by, place.grippedAt), mostSwing)
  return { ...place, off, turned: place.turned + off - place.off }
}

/** By how much the handle can be put back: a plain end only by whole flats. */
const backBy: Readonly<Record<Grip, number>> = { hexagon: 60, 'bi-hexagon': 30, ratchet: 0 }

/** The handle taken back towards its start, the fastener staying as it is. */
export function regripped({ grip }: AngleTurn, place: HandlePlace): HandlePlace {
  const by = backBy[grip]
  const off = by === 0 ? 0 : place.off - Math.floor(place.off / by) * by
  return { ...place, off, grippedAt: off }
}

/** How far off the target it came, in whole degrees: above 0 where it was turned too far. */
export function judgeTurn({ window }: AngleTurn, { turned }: HandlePlace) {
  const reached = Math.round(turned)
  return { reached, off: reached - window.target, verdict: verdictOf(window, reached) }
}
