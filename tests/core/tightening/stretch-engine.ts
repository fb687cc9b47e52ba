import { engineSpec, type EngineSpec } from '../../../core/engine/index.ts'
import { winchEngine } from './winch-engine.ts'

type Draft = Parameters<typeof engineSpec.shape.procedures.parse>[0]

/** The winch engine with a procedure of our own over its three caps. */
export function capsBy(
  passes: readonly object[],
  change: (spec: EngineSpec) => EngineSpec = (spec) => spec,
): EngineSpec {
  const procedures: Draft = [
    {
      id: 'own',
      name: 'Caps',
      face: 'block',
      orders: [{ id: 'all', sequence: ['cap-1', 'cap-2', 'cap-3'] }],
      passes: passes.map((pass) => ('instruction' in pass ? pass : { order: 'all', ...pass })),
    },
  ]
  return change({
    ...winchEngine,
    procedures: engineSpec.shape.procedures.parse(procedures),
    steps: [{ id: 'own-run', name: 'Caps', kind: 'run-procedure', procedure: 'own', after: [] }],
  })
}

/** Each cap nut is measured, pulled to 30 lbf·ft, then tightened until it is 0.019 to 0.024 in longer, at 60 to 90 lbf·ft. */
export const byStretch = [
  { kind: 'length' },
  { kind: 'torque', target: '30 lbf·ft' },
  {
    kind: 'tighten-to-stretch',
    least: '0.019 in',
    most: '0.024 in',
    torque: { least: '60 lbf·ft', most: '90 lbf·ft' },
  },
]
