import type { EngineSpec, FastenerGroup } from '../../engine/index.ts'

/** The group of a fastener: all that are one part. Undefined for none, and for one that the spec does not know. */
export function groupOf(spec: EngineSpec, fastener: string | null): FastenerGroup | undefined {
  const group = spec.fasteners.find(({ id }) => id === fastener)?.group
  return spec.fastenerGroups.find(({ id }) => id === group)
}
