import { formatNumber, formatLength, formatTorque, inMillimetres } from '../quantity/index.ts'
import type { FastenerGroup } from '../engine/index.ts'
import { elasticModuliMpa } from './bolt-resilience.ts'
import type { FastenedJoint, ThreadState } from './fastened.ts'
import { formatThread } from './thread.ts'

/** One thing that a calculation was made from, in words: what it is, its value, and where that comes from. */
export interface Input {
  readonly name: string
  readonly value: string
  readonly source: string
}

const stateWords: Readonly<Record<ThreadState, string>> = {
  oiled: 'oiled threads: VDI 2230 part 1, table A5, class B and its middle',
  dry: 'dry threads: VDI 2230 part 1, table A5, class C and its middle',
  sealant: 'sealant on the threads: VDI 2230 part 1, table A5, classes B and C together',
  'thread-lock': 'thread-lock on the threads: VDI 2230 part 1, table A5, classes B and C together',
}

const threadSource = {
  metric: 'the spec; its other sizes by ISO 724',
  unified: 'the spec; its other sizes by ASME B1.1',
} as const

function faceSource({ headFace, head }: FastenerGroup): string {
  if (headFace !== undefined) return 'the spec'
  return head === 'socket'
    ? 'from the diameter of a socket head, as ISO 4762 and ISO 273 have it'
    : 'from the width across flats, as ISO 4014 and ISO 273 have it'
}

/** What `torqueEffect` is made from, for the person who wants to know. */
export function torqueInputs(group: FastenerGroup, joint: FastenedJoint): readonly Input[] {
  const { thread, strength, bearing, friction, threadState, prevailing } = joint
  const mm = (length: typeof bearing.outer) => String(inMillimetres(length))
  return [
    { name: 'Thread', value: formatThread(thread), source: threadSource[thread.system] },
    {
      name: 'Property class',
      value: `${group.propertyClass}: proof ${strength.proofMpa} MPa, yield ${strength.yieldMpa} MPa`,
      source: group.propertyClass.startsWith('SAE')
        ? 'the spec; SAE J429, table 1'
        : 'the spec; ISO 898-1, table 3',
    },
    {
      name: 'Face under the head',
      value: `Ø ${mm(bearing.outer)} mm with a hole of Ø ${mm(bearing.hole)} mm`,
      source: faceSource(group),
    },
    {
      name: 'Friction',
      value: `${friction.usual}, between ${friction.least} and ${friction.most}; the limits of the preload follow from that`,
      source:
        group.frictionClass === undefined
          ? stateWords[threadState]
          : `class ${group.frictionClass} of the spec: VDI 2230 part 1, table A5, and its middle`,
    },
    ...(prevailing === 0
      ? []
      : [
          {
            name: 'Prevailing torque',
            value: `${formatTorque(prevailing, 'N·m')}, which goes off the torque before it clamps`,
            source: 'the spec; ISO 2320',
          },
        ]),
    {
      name: 'Torque and preload',
      value: 'M = F·(0.16·P + 0.58·d2·µ + D_Km/2·µ)',
      source: 'VDI 2230 part 1, ISO 16047',
    },
    {
      name: 'Where it yields',
      value: 'tension and twist together reach the yield point',
      source: 'VDI 2230 part 1, 2001 and later',
    },
  ]
}

/** What `turnEffect` is made from besides. */
export function turnInputs(group: FastenerGroup, joint: FastenedJoint): readonly Input[] {
  const perKilonewton = (mmPerN: number) => `${formatNumber(mmPerN * 1e6, 2)} µm for each kN`
  const grip = formatLength(group.grip, 'mm', 0)
  const waist = group.shank === undefined ? '' : `, its shank of ${formatLength(group.shank, 'mm', 1)}`
  return [
    {
      name: 'How far the bolt stretches',
      value: perKilonewton(joint.boltMmPerN),
      source:
        `VDI 2230 part 1, 5.1.1; a steel bolt of ${group.head === 'socket' ? 'ISO 4762' : 'ISO 4014'} over a grip of ${grip}${waist}, ` +
        (group.into === 'nut' ? 'with a nut' : 'one diameter of it engaged'),
    },
    {
      name: 'How far the parts give way',
      value: perKilonewton(joint.clampedMmPerN),
      source:
        `${group.into === 'nut' ? 'two cones' : 'a cone'} of 30° under the head${group.into === 'nut' ? ' and the nut' : ''} ` +
        `(Shigley's Mechanical Engineering Design, 8-5), in ${partsText(group)}` +
        (group.into === 'nut' ? '' : ', into a tapped hole'),
    },
    {
      name: 'Turn and preload',
      value: 'ΔF = θ/360° · P/(δ_S + δ_P), level from where it yields',
      source: 'VDI 2230 part 1',
    },
  ]
}

/** `aluminium of 71 GPa`, or each layer with its thickness. */
function partsText({ layers, clamped }: FastenerGroup): string {
  const gigapascals = (material: FastenerGroup['clamped']) =>
    `${material} of ${formatNumber(elasticModuliMpa[material] / 1000, 0)} GPa`
  if (layers === undefined) return gigapascals(clamped)
  return layers
    .map(({ material, thickness }) => `${formatLength(thickness, 'mm', 1)} of ${gigapascals(material)}`)
    .join(' on ')
}
