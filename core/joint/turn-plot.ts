import { degrees, newtons, type Angle, type Force } from '../quantity/index.ts'
import type { FastenedJoint } from './fastened.ts'
import type { TorqueRange } from './torque-against-proof.ts'
import { yieldLoadAt, type Spread } from './torque-effect.ts'
import { turnEffect, type TurnWindow } from './turn-effect.ts'

/** A place on the plot of preload against turn. */
export interface TurnPoint {
  readonly turn: Angle
  readonly preload: Force
}

/** Preload against the turn since the torque, as lines to draw. */
export interface TurnPlot {
  /** How far the plot goes. */
  readonly upTo: Angle
  readonly most: Force
  /**
   * From the least, the usual and the most that the torque leaves: the elastic line, then level where the
   * fastener yields.
   */
  readonly lines: Readonly<Record<keyof Spread<Force>, readonly TurnPoint[]>>
  /** Where the usual line begins, passes the proof load and yields; null past the end of the plot. */
  readonly snug: TurnPoint
  readonly proof: TurnPoint | null
  readonly yielding: TurnPoint | null
  readonly proofLoad: Force
  readonly yieldLoad: Force
  /** The spec's turns. */
  readonly window: TurnWindow
}

/**
 * How far past the last limit the plot goes, and past the load at which the fastener yields: room to see what
 * comes after.
 */
const room = 1.2

/** Preload against turn for a fastener that is torqued and then turned. */
export function turnPlot(joint: FastenedJoint, torque: TorqueRange, window: TurnWindow): TurnPlot {
  const { snug, perDegree, toProof, toYield, proofLoad, yieldLoad } = turnEffect(joint, torque, window)
  const upTo = degrees(room * window.most)
  const { friction } = joint
  const line = (from: Force, coefficient: number): readonly TurnPoint[] => {
    const yieldLoad = yieldLoadAt(joint, coefficient)
    const start = { turn: degrees(0), preload: newtons(Math.min(from, yieldLoad)) }
    const bend = degrees((yieldLoad - start.preload) / perDegree)
    if (bend >= upTo) return [start, { turn: upTo, preload: newtons(start.preload + perDegree * upTo) }]
    return [start, { turn: bend, preload: yieldLoad }, { turn: upTo, preload: yieldLoad }]
  }
  const within = (turn: Angle | null, preload: Force) =>
    turn !== null && turn <= upTo ? { turn, preload } : null
  return {
    upTo,
    most: newtons(room * yieldLoad),
    lines: {
      least: line(snug.least, friction.most),
      usual: line(snug.usual, friction.usual),
      most: line(snug.most, friction.least),
    },
    snug: { turn: degrees(0), preload: newtons(Math.min(snug.usual, yieldLoad)) },
    proof: within(toProof, proofLoad),
    yielding: within(toYield, yieldLoad),
    proofLoad,
    yieldLoad,
    window,
  }
}
