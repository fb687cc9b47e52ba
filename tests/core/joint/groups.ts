import { fastenedJoint, type FastenedJoint } from '../../../core/joint/index.ts'
import type { FastenerGroup } from '../../../core/engine/index.ts'
import { demoDraft, nth, specOf } from '../engine/demo.ts'
import { valueOf } from './workshop.ts'

/**
 * A group as a spec has it: oiled M10×1.5, 8.8, 60 mm of aluminium, heads and holes of ISO 4014 and ISO 273,
 * with changes.
 */
export function groupOf(change: object = {}): FastenerGroup {
  const draft = demoDraft('skerry-3')
  const group = {
    ...nth(draft.fastenerGroups, 0),
    thread: { diameter: '10 mm', pitch: '1.5 mm' },
    grip: '60 mm',
    propertyClass: '8.8',
    acrossFlats: '16 mm',
    headFace: { outer: '14.63 mm', hole: '11 mm' },
    threadState: 'oiled' as const,
    ...change,
  }
  const spec = specOf({ ...draft, fastenerGroups: [group, ...draft.fastenerGroups.slice(1)] })
  return nth(spec.fastenerGroups, 0)
}

export function jointOf(change: object = {}): FastenedJoint {
  return valueOf(fastenedJoint(groupOf(change)))
}
