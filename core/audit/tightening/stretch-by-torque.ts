import {
  clampingTorque,
  fastenedJoint,
  preloadFromTorque,
  softestBoltMmPerN,
  yieldLoadAt,
  type FastenedJoint,
} from '../../joint/index.ts'
import { lengthAmount, millimetres, torqueAmount, type Length, type Torque } from '../../quantity/index.ts'
import type { EngineSpec, FastenerGroup, Pass } from '../../engine/index.ts'
import { lengthUnitOf, torqueUnitOf } from '../entered-unit.ts'
import { doubt, type Finding } from '../finding.ts'

type StretchPass = Extract<Pass, { kind: 'tighten-to-stretch' }>

/**
 * By this factor the calculation may be wrong about how much longer a bolt gets: it knows neither the shank nor how the thread
 * is engaged. Common practice, no source.
 */
const uncertain = 1.25

/**
 * Group by group, whether the torques of a pass that tightens to a stretch can give that stretch: a bolt gets longer by
 * F·δ_S (VDI 2230 part 1, 5.1.1), and F follows from the torque over the friction of the thread's state. One that begins to
 * yield within the torque may get as long as one likes. Calculated, so a doubt.
 */
export function auditStretchByTorque(
  { fasteners, fastenerGroups }: EngineSpec,
  pass: StretchPass,
  ids: readonly string[],
  place: { readonly procedure: string; readonly pass: number },
  path: string,
): readonly Finding[] {
  const groups = new Set(fasteners.filter(({ id }) => ids.includes(id)).map(({ group }) => group))
  return fastenerGroups.flatMap((group) => {
    if (!groups.has(group.id)) return []
    const joint = fastenedJoint(group)
    if (!joint.ok) return []
    const { least, most } = longerBy(group, joint.value, pass.torque)
    const tooShort = most !== null && uncertain * most < pass.least
    const tooLong = least > uncertain * pass.most
    if (!tooShort && !tooLong) return []
    const lengthUnit = lengthUnitOf([pass.least, pass.most])
    const torqueUnit = torqueUnitOf([pass.torque.least, pass.torque.most])
    const facts = {
      ...place,
      group: group.name,
      torque: torqueAmount(tooShort ? pass.torque.most : pass.torque.least, torqueUnit),
      longer: lengthAmount(tooShort ? most : least, lengthUnit),
      bound: lengthAmount(tooShort ? pass.least : pass.most, lengthUnit),
      tooShort,
    }
    return [doubt('stretch-not-by-torque', facts, `${path}.torque`)]
  })
}

/** How much longer the torques make a bolt: the least at its stiffest, the most at its softest; null where it may yield. */
function longerBy(
  group: FastenerGroup,
  joint: FastenedJoint,
  torque: StretchPass['torque'],
): { readonly least: Length; readonly most: Length | null } {
  const { thread, bearing, friction } = joint
  const preloadAt = (pulled: Torque, takes: 'least' | 'most') =>
    preloadFromTorque(
      { thread, bearing, friction: { thread: friction[takes], head: friction[takes] } },
      clampingTorque(joint, pulled, takes),
    )
  const leastPreload = preloadAt(torque.least, 'most')
  const mostPreload = preloadAt(torque.most, 'least')
  const yields = mostPreload >= yieldLoadAt(joint, friction.least)
  return {
    least: millimetres(Math.min(leastPreload, yieldLoadAt(joint, friction.most)) * joint.boltMmPerN),
    most: yields ? null : millimetres(mostPreload * softestBoltMmPerN(group, joint.thread)),
  }
}
