import { done, refused, type Outcome } from '../../problem/index.ts'
import { inMillimetres } from '../../quantity/index.ts'
import { headWidth, type EngineSpec, type Face } from '../../engine/index.ts'
import { elasticModuliMpa } from '../bolt-resilience.ts'
import { fastenedJoint } from '../fastened.ts'
import type { Point } from '../../plane/index.ts'

/** A fastener on a face, with what its group says that matters to the flange. Sizes in mm. */
export interface FaceFastener extends Point {
  readonly id: string
  readonly gripMm: number
  readonly acrossFlatsMm: number
  readonly modulusMpa: number
  readonly stiffnessNPerMm: number
}

/** The fasteners of a face. Refuses `face-without-fasteners`, and what `fastenedJoint` refuses. */
export function fastenersOn(spec: EngineSpec, face: Face): Outcome<readonly FaceFastener[]> {
  const found: FaceFastener[] = []
  for (const { id, group: groupId, face: on, at } of spec.fasteners) {
    const group = spec.fastenerGroups.find((each) => each.id === groupId)
    if (on !== face.id || group === undefined) continue
    const joint = fastenedJoint(group)
    if (!joint.ok) return joint
    found.push({
      id,
      x: inMillimetres(at[0]),
      y: inMillimetres(at[1]),
      gripMm: inMillimetres(group.grip),
      acrossFlatsMm: inMillimetres(headWidth(group)),
      modulusMpa: elasticModuliMpa[group.clamped],
      stiffnessNPerMm: 1 / joint.value.boltMmPerN,
    })
  }
  return found.length > 0 ? done(found) : refused('face-without-fasteners', { face: face.name })
}

/** The mean over some fasteners, of which there is one at least. */
export function meanOf(fasteners: readonly FaceFastener[], of: (fastener: FaceFastener) => number): number {
  return fasteners.reduce((total, fastener) => total + of(fastener), 0) / fasteners.length
}
