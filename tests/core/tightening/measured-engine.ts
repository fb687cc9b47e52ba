import { engineSpec, type EngineSpec } from '../../../core/engine/index.ts'
import { winchEngine } from './winch-engine.ts'

/** The winch engine with a procedure of measured passes: gap, lengths, stretch, end float, and a recheck until none moves. */
export const measuredEngine: EngineSpec = {
  ...winchEngine,
  procedures: [
    ...winchEngine.procedures,
    ...engineSpec.shape.procedures.parse([
      {
        id: 'measured',
        name: 'Measured caps',
        face: 'block',
        orders: [{ id: 'all', sequence: ['cap-1', 'cap-2', 'cap-3'] }],
        passes: [
          { kind: 'length', order: 'all' },
          { kind: 'seat', order: 'all', gap: { most: '0.05 mm' } },
          { kind: 'torque', order: 'all', target: '30 N·m' },
          { kind: 'stretch', order: 'all', least: '0.10 mm', most: '0.15 mm' },
          {
            kind: 'action',
            instruction: 'Measure the end float.',
            reading: { least: '0.004 in', most: '0.010 in' },
          },
          {
            kind: 'recheck',
            order: 'all',
            target: '30 N·m',
            only: ['cap-1', 'cap-3'],
            repeat: 'until-none-moves',
          },
          { kind: 'loosen', order: 'all', reversed: true },
        ],
      },
    ]),
  ],
  steps: [
    ...winchEngine.steps,
    { id: 'measured-run', name: 'Measured', kind: 'run-procedure', procedure: 'measured', after: [] },
  ],
}
