import type { EngineSpec } from '../../engine/index.ts'

/** The number beside a fastener on the drawing; null for none, the id where the spec does not know it. */
export function numberOf(spec: EngineSpec, fastener: string | null): string | null {
  if (fastener === null) return null
  return spec.fasteners.find(({ id }) => id === fastener)?.number ?? fastener
}
