import fc from 'fast-check'
import { audit } from '../../../core/audit/index.ts'
import type { EngineSpec } from '../../../core/engine/index.ts'
import { anyEngine } from '../layout/any-engine.ts'
import { demo } from '../layout/demos.ts'

/** Engines of any size, some with one fastener only, without a chart, a bead or an oil way: one procedure in an order drawn by chance. */
export const seatedEngine: fc.Arbitrary<EngineSpec> = fc
  .tuple(anyEngine, fc.boolean())
  .chain(([spec, single]) => {
    const fasteners = single ? spec.fasteners.slice(0, 1) : spec.fasteners
    return fc
      .shuffledSubarray(
        fasteners.map(({ id }) => id),
        { minLength: fasteners.length },
      )
      .map((sequence) => withProcedure({ ...spec, fasteners }, sequence))
  })
  .filter((spec) => audit(spec).every(({ weight }) => weight !== 'fault'))

function withProcedure(spec: EngineSpec, sequence: string[]): EngineSpec {
  const [pattern] = demo('skerry-3').procedures
  const passes = pattern!.passes.flatMap((pass) =>
    pass.kind === 'seat' || pass.kind === 'torque' ? [{ ...pass, order: 'any' }] : [],
  )
  return {
    ...spec,
    procedures: [{ ...pattern!, id: 'joint', face: 'joint', orders: [{ id: 'any', sequence }], passes }],
    steps: [{ id: 'pull', name: 'Pull', kind: 'run-procedure', procedure: 'joint', after: [] }],
  }
}
