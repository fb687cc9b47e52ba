import type { Message } from '../problem/index.ts'
import {
  fixedAmount,
  lengthAmount,
  shortAmount,
  shortLengthAmount,
  torqueAmount,
  type Length,
} from '../quantity/index.ts'
import type { FastenerGroup } from '../engine/index.ts'
import type { Words } from '../words/index.ts'
import { elasticModuliMpa } from './bolt-resilience.ts'
import type { FastenedJoint } from './fastened.ts'
import { standardOf } from './property-class.ts'
import { formatThread } from './thread.ts'

type Tables = Words['pullInputs']
type Source = Message<Tables['sources']>

/** One thing that a calculation was made from: what it is, its value, and where that comes from. */
export interface Input {
  readonly name: keyof Tables['names']
  readonly value: Message<Tables['values']>
  readonly source: Source
}

const classSources = { iso: 'iso-class', sae: 'sae-class', astm: 'astm-class' } as const

function faceSource({ headFace, head, thread }: FastenerGroup): Source {
  if (headFace !== undefined) return { code: 'spec', facts: {} }
  if (head === 'hexagon') return { code: 'hexagon-head', facts: {} }
  return { code: thread.system === 'unified' ? 'inch-socket-head' : 'socket-head', facts: {} }
}

function frictionSource({ frictionClass }: FastenerGroup, { threadState }: FastenedJoint): Source {
  return frictionClass === undefined
    ? { code: 'threads-state', facts: { state: threadState } }
    : { code: 'friction-class', facts: { name: frictionClass } }
}

/** What `torqueEffect` is made from, for the person who wants to know. */
export function torqueInputs(group: FastenerGroup, joint: FastenedJoint): readonly Input[] {
  const { thread, strength, bearing, friction } = joint
  const { prevailing, torqueIncludesPrevailing } = group
  const mm = (length: Length) => shortLengthAmount(length, 'mm', 6)
  const plain = (value: number, unit = '') => shortAmount(value, unit, 6)
  return [
    {
      name: 'thread',
      value: { code: 'thread', facts: { designation: formatThread(thread) } },
      source: { code: thread.system === 'metric' ? 'metric-thread' : 'unified-thread', facts: {} },
    },
    {
      name: 'class',
      value: {
        code: 'class',
        facts: {
          name: group.propertyClass,
          proof: shortAmount(strength.proofMpa, 'MPa', 1),
          yield: shortAmount(strength.yieldMpa, 'MPa', 1),
        },
      },
      source: { code: classSources[standardOf(group.propertyClass)], facts: {} },
    },
    {
      name: 'face',
      value: { code: 'face', facts: { outer: mm(bearing.outer), hole: mm(bearing.hole) } },
      source: faceSource(group),
    },
    {
      name: 'friction',
      value: {
        code: 'friction',
        facts: {
          usual: plain(friction.usual),
          least: plain(friction.least),
          most: plain(friction.most),
        },
      },
      source: frictionSource(group, joint),
    },
    ...(prevailing === undefined
      ? []
      : [
          {
            name: 'prevailing',
            value: {
              code: 'prevailing',
              facts: {
                torque: torqueAmount(prevailing, 'N·m'),
                isIncluded: torqueIncludesPrevailing ?? null,
              },
            },
            source: { code: 'prevailing', facts: {} },
          } as const,
        ]),
    { name: 'torque', value: { code: 'torque', facts: {} }, source: { code: 'torque', facts: {} } },
    { name: 'yield', value: { code: 'yield', facts: {} }, source: { code: 'yield', facts: {} } },
  ]
}

/** What `turnEffect` is made from besides. */
export function turnInputs(group: FastenerGroup, joint: FastenedJoint): readonly Input[] {
  const resilience = (mmPerN: number) =>
    ({ code: 'resilience', facts: { perKilonewton: fixedAmount(mmPerN * 1e6, 'µm', 2) } }) as const
  const { head, into } = group
  return [
    {
      name: 'bolt',
      value: resilience(joint.boltMmPerN),
      source: {
        code: 'bolt',
        facts: {
          head,
          grip: lengthAmount(group.grip, 'mm', 0),
          shank: group.shank === undefined ? null : lengthAmount(group.shank, 'mm', 1),
          into,
        },
      },
    },
    {
      name: 'parts',
      value: resilience(joint.clampedMmPerN),
      source: { code: 'parts', facts: { into, layers: layersOf(group) } },
    },
    { name: 'turn', value: { code: 'turn', facts: {} }, source: { code: 'turn', facts: {} } },
  ]
}

/** Each layer of the grip with its modulus of elasticity; one without thickness where there is one material. */
function layersOf({ layers, clamped }: FastenerGroup) {
  const modulus = (material: FastenerGroup['clamped']) =>
    fixedAmount(elasticModuliMpa[material] / 1000, 'GPa', 0)
  if (layers === undefined) return [{ material: clamped, modulus: modulus(clamped), thickness: null }]
  return layers.map(({ material, thickness }) => ({
    ...{ material, modulus: modulus(material) },
    thickness: lengthAmount(thickness, 'mm', 1),
  }))
}
