import { holdsCrank, type EngineSpec } from '../engine/index.ts'
import { doubt, fault, type Finding } from './finding.ts'

/** What a spec that is only begun lacks: fasteners at all, saddles for its crank, shells for its bearings, the end float. */
export function auditMissing(spec: EngineSpec): readonly Finding[] {
  const { fasteners, fits, endFloat } = spec
  const fitted = new Set(fits.flatMap(({ positions }) => positions))
  const without = (list: readonly { readonly id: string }[]) =>
    list.flatMap(({ id }) => (fitted.has(id) ? [] : [id]))
  const { saddles, rods } = spec.case
  const bearings = [
    { bearing: 'main', ids: without(saddles), path: 'case.saddles' },
    { bearing: 'big-end', ids: without(rods), path: 'case.rods' },
  ] as const
  const thrust = saddles.findIndex((saddle) => saddle.thrust)
  return [
    ...(fasteners.length === 0 ? [fault('fasteners-none', {}, 'fasteners')] : []),
    ...(saddles.length === 0 && holdsCrank(spec.case) ? [fault('saddles-none', {}, 'case.saddles')] : []),
    ...bearings.flatMap(({ bearing, ids, path }) =>
      ids.length === 0 ? [] : [doubt('bearings-without-fit', { bearing, ids }, path)],
    ),
    ...(thrust >= 0 && endFloat === undefined
      ? [doubt('end-float-missing', { saddle: saddles[thrust]!.id }, `case.saddles[${thrust}].thrust`)]
      : []),
  ]
}
