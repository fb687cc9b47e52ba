import {
  assemblyPreload,
  boltResilience,
  elasticModuliMpa,
  fastenedJoint,
  preloadFromTorque,
  preloadGain,
  proofLoad,
  type FastenedJoint,
} from '../joint/index.ts'
import {
  degrees,
  formatAngle,
  formatForce,
  millimetres,
  newtonMetres,
  newtons,
  type Angle,
  type Torque,
} from '../quantity/index.ts'
import { fastenersOf, type EngineSpec, type FastenerGroup, type Procedure } from '../engine/index.ts'
import { doubt, type Finding } from './finding.ts'
import { angleOf, torquesOf } from './pulls.ts'

/**
 * How many times the load at which a bolt begins to yield an elastic reckoning may come to. Bolts are turned past yield on
 * purpose, and the reckoning knows neither shank nor boss; so only what is far outside is told of. Common practice, no source.
 */
const muchPastYield = 1.5

/**
 * Turns that leave the elastic line by much, at the usual friction of the thread. The bolt is taken at its softest, with
 * thread all along its grip.
 */
export function auditTurns(spec: EngineSpec): readonly Finding[] {
  const groups = new Map(spec.fasteners.map(({ id, group }) => [id, group]))
  return spec.procedures.flatMap((procedure, index) =>
    spec.fastenerGroups.flatMap((group) => {
      const screw = fastenedJoint(group)
      const fastener = procedure.orders
        .flatMap(({ sequence }) => sequence)
        .find((id) => groups.get(id) === group.id)
      if (!screw.ok || fastener === undefined) return []
      return auditTurn(procedure, group, screw.value, fastener, `procedures[${index}]`)
    }),
  )
}

function auditTurn(
  procedure: Procedure,
  group: FastenerGroup,
  screw: FastenedJoint,
  fastener: string,
  path: string,
): readonly Finding[] {
  const turned = turnOf(procedure, fastener)
  if (turned === null) return []
  const { usual } = screw.friction
  const friction = { thread: usual, head: usual }
  const snug = preloadFromTorque({ ...screw, friction }, turned.torque)
  const gain = preloadGain(screw.thread, turned.angle, resilienceOf(group, screw))
  const preload = newtons(snug + gain)
  const yieldLoad = assemblyPreload(screw.thread, screw.strength, friction.thread, 1)
  if (preload <= muchPastYield * yieldLoad) return []
  const facts = {
    procedure: procedure.name,
    pass: turned.pass + 1,
    angle: formatAngle(turned.angle),
    group: group.name,
    preload: formatForce(preload),
    proof: formatForce(proofLoad(screw.thread, screw.strength)),
    yieldLoad: formatForce(yieldLoad),
  }
  return [doubt('turn-leaves-elastic-line', facts, `${path}.passes[${turned.pass}].target`)]
}

interface Turn {
  readonly torque: Torque
  /** All that comes after the torque. */
  readonly angle: Angle
  /** The last angle pass, counted from 0. */
  readonly pass: number
}

/** The torque that a fastener is turned on from, and how far; null when it is not turned by an angle. */
function turnOf(procedure: Procedure, fastener: string): Turn | null {
  let torque = newtonMetres(0)
  let turn: Turn | null = null
  procedure.passes.forEach((pass, index) => {
    if (!fastenersOf(procedure, pass).includes(fastener)) return
    if (pass.kind === 'torque' || pass.kind === 'loosen') {
      torque = pass.kind === 'torque' ? torquesOf(pass)(fastener) : newtonMetres(0)
      turn = null
    }
    if (pass.kind === 'angle')
      turn = { torque, angle: degrees((turn?.angle ?? 0) + angleOf(pass, fastener)), pass: index }
  })
  return turn
}

function resilienceOf({ grip, clamped }: FastenerGroup, { thread, clampedMmPerN }: FastenedJoint): number {
  const bolt = boltResilience({
    thread,
    shank: millimetres(0),
    freeThread: grip,
    anchor: 'tapped hole',
    modulusMpa: elasticModuliMpa.steel,
    anchorModulusMpa: elasticModuliMpa[clamped],
  })
  return bolt + clampedMmPerN
}
