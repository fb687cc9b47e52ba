import {
  bearingFace,
  hexBearingFace,
  strengthOf,
  threadOf,
  type BearingFace,
  type Strength,
  type Thread,
} from '../../joint/index.ts'
import { done, type Outcome } from '../../problem/index.ts'
import { formatLength } from '../../quantity/index.ts'
import type { FastenerGroup } from '../fastening.ts'
import type { EngineSpec } from '../schema.ts'
import { fault, type Finding } from './finding.ts'

/** What the fasteners of a group are, reckoned from what the spec says of them. */
export interface Screw {
  readonly thread: Thread
  readonly strength: Strength
  readonly bearing: BearingFace
}

/** Refuses what `threadOf`, `strengthOf` and `bearingFace` refuse. */
export function screwOf(group: FastenerGroup): Outcome<Screw> {
  const thread = threadOf(group.thread.diameter, group.thread.pitch)
  if (!thread.ok) return thread
  const strength = strengthOf(group.propertyClass, thread.value)
  if (!strength.ok) return strength
  const bearing =
    group.headFace === undefined
      ? hexBearingFace(thread.value, group.acrossFlats)
      : bearingFace(group.headFace.outer, group.headFace.hole)
  return bearing.ok
    ? done({ thread: thread.value, strength: strength.value, bearing: bearing.value })
    : bearing
}

/** Groups whose thread, class or head cannot be. */
export function auditScrews({ fastenerGroups }: EngineSpec): readonly Finding[] {
  return fastenerGroups.flatMap((group, index) => {
    const path = `fastenerGroups[${index}]`
    const screw = screwOf(group)
    if (!screw.ok) return [{ weight: 'fault' as const, problem: { ...screw.problem, path } }]
    const { acrossFlats, thread } = group
    if (acrossFlats > thread.diameter) return []
    const facts = {
      group: group.name,
      acrossFlats: formatLength(acrossFlats, 'mm'),
      thread: formatLength(thread.diameter, 'mm'),
    }
    return [fault('head-smaller-than-thread', facts, `${path}.acrossFlats`)]
  })
}
