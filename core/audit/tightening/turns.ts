import {
  clampingTorque,
  fastenedJoint,
  preloadFromTorque,
  preloadGain,
  proofLoad,
  softestBoltMmPerN,
  usualScrew,
  yieldLoadAt,
  type FastenedJoint,
} from '../../joint/index.ts'
import {
  angleAmount,
  degrees,
  forceAmount,
  newtonMetres,
  newtons,
  type Angle,
  type Torque,
} from '../../quantity/index.ts'
import {
  fastenersOf,
  writtenAt,
  type EngineSpec,
  type FastenerGroup,
  type Procedure,
} from '../../engine/index.ts'
import { doubt, type Finding } from '../finding.ts'
import { angleOf, torquesOf } from './pulls.ts'

/**
 * How many times the load at which a bolt begins to yield an elastic calculation may come to. Bolts are turned past yield on
 * purpose, and the calculation knows neither shank nor boss; so only what is far outside is reported. Common practice, no source.
 */
const muchPastYield = 1.5

/**
 * Turns that leave the elastic line by much, at the usual friction of the thread, for every fastener and its own values. The
 * bolt is taken at its softest, with thread all along its grip.
 */
export function auditTurns(spec: EngineSpec): readonly Finding[] {
  const groupOf = new Map(spec.fasteners.map(({ id, group }) => [id, group]))
  return spec.procedures.flatMap((procedure, index) => {
    const ids = new Set(procedure.orders.flatMap(({ sequence }) => sequence))
    return spec.fastenerGroups.flatMap((group) => {
      const screw = fastenedJoint(group)
      if (!screw.ok) return []
      const turns = [...ids]
        .filter((id) => groupOf.get(id) === group.id)
        .flatMap((id) => turnOf(procedure, id) ?? [])
      // Alike for most of a group: reported once.
      const unlike = new Map(turns.map((turn) => [`${turn.torque} ${turn.angle} ${turn.path}`, turn]))
      return [...unlike.values()].flatMap((turn) =>
        auditTurn(procedure, group, screw.value, turn, `procedures[${index}]`),
      )
    })
  })
}

function auditTurn(
  procedure: Procedure,
  group: FastenerGroup,
  screw: FastenedJoint,
  turned: Turn,
  path: string,
): readonly Finding[] {
  const snug = preloadFromTorque(usualScrew(screw), clampingTorque(screw, turned.torque))
  const gain = preloadGain(screw.thread, turned.angle, resilienceOf(group, screw))
  const preload = newtons(snug + gain)
  const yieldLoad = yieldLoadAt(screw, screw.friction.usual)
  if (preload <= muchPastYield * yieldLoad) return []
  const facts = {
    procedure: procedure.name,
    pass: turned.pass + 1,
    angle: angleAmount(turned.angle),
    group: group.name,
    preload: forceAmount(preload),
    proof: forceAmount(proofLoad(screw.thread, screw.strength)),
    yieldLoad: forceAmount(yieldLoad),
  }
  return [doubt('turn-leaves-elastic-line', facts, `${path}.${turned.path}`)]
}

interface Turn {
  readonly torque: Torque
  /** All that comes after the torque. */
  readonly angle: Angle
  /** The last angle pass, counted from 0. */
  readonly pass: number
  /** Of its value in the procedure. */
  readonly path: string
}

/** The torque that a fastener is turned on from, and how far; null when it is not turned by an angle. */
function turnOf(procedure: Procedure, fastener: string): Turn | null {
  let torque = newtonMetres(0)
  let turn: Turn | null = null
  procedure.passes.forEach((pass, index) => {
    if (!fastenersOf(procedure, pass).includes(fastener)) return
    if (pass.kind === 'torque' || pass.kind === 'tighten-to-stretch' || pass.kind === 'loosen') {
      torque = pass.kind === 'torque' ? torquesOf(pass)(fastener) : newtonMetres(0)
      turn = null
    }
    if (pass.kind === 'angle') {
      const own = (pass.others ?? []).findIndex(({ fasteners }) => fasteners.includes(fastener))
      const path = `passes[${writtenAt(procedure.passes, index)}].${own < 0 ? '' : `others[${own}].`}target`
      turn = { torque, angle: degrees((turn?.angle ?? 0) + angleOf(pass, fastener)), pass: index, path }
    }
  })
  return turn
}

function resilienceOf(group: FastenerGroup, { thread, clampedMmPerN }: FastenedJoint): number {
  return softestBoltMmPerN(group, thread) + clampedMmPerN
}
