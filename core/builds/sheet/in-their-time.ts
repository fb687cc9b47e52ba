import type { EngineSpec } from '../../engine/index.ts'
import type { Stamp } from '../events/stamp.ts'

/** A spec by which a build went, up to and including an entry. */
export interface SpecUntil {
  readonly spec: EngineSpec
  readonly until: number
}

/** The spec that held at an entry, with whatever is known of it. */
export function heldAt<Held extends SpecUntil>(specs: readonly Held[], seq: number): Held {
  return specs.find(({ until }) => seq <= until) ?? specs.at(-1)!
}

/** The spec that held at an entry. */
export function specAt(specs: readonly SpecUntil[], seq: number): EngineSpec {
  return heldAt(specs, seq).spec
}

/** Rows about entries, each as the spec has it that held at its entry: limits that came later judge nothing that was done before. */
export function inTheirTime<Row extends Pick<Stamp, 'seq'>>(
  specs: readonly SpecUntil[],
  rowsBy: (spec: EngineSpec) => readonly Row[],
): readonly Row[] {
  if (specs.length === 1) return rowsBy(specs[0]!.spec)
  let from = 0
  return specs.flatMap(({ spec, until }) => {
    const after = from
    from = until
    return rowsBy(spec).filter(({ seq }) => seq > after && seq <= until)
  })
}
