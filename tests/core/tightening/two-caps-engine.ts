import { engineSpec, type EngineSpec } from '../../../core/engine/index.ts'
import { winchDraft } from './winch-engine.ts'

/**
 * The winch engine with two rods whose bolts may be used again, brought up cap by cap: seat, 20 N·m, and the crank is turned, at
 * most 5 N·m and at most 1 N·m more than before.
 */
export const twoCapsEngine: EngineSpec = engineSpec.parse({
  ...winchDraft,
  id: 'winch-2',
  case: {
    ...winchDraft.case,
    cylinders: 2,
    rods: [
      { id: 'B1', cylinder: 1, at: '40 mm', width: '20 mm', diameter: '50 mm' },
      { id: 'B2', cylinder: 2, at: '140 mm', width: '20 mm', diameter: '50 mm' },
    ],
  },
  fasteners: [
    ['a', 40, 30],
    ['b', 40, -30],
    ['c', 140, 30],
    ['d', 140, -30],
  ].map(([id, x, y], index) => ({
    ...{ id, number: `R${index + 1}`, group: 'cap-bolts', face: 'rods' },
    ...{ at: [`${x} mm`, `${y} mm`], where: `rod, place ${id}` },
  })),
  procedures: [
    {
      id: 'rods',
      name: 'Rod bolts',
      face: 'rods',
      capByCap: true,
      orders: [{ id: 'all', sequence: ['c', 'd', 'a', 'b'] }],
      passes: [
        { kind: 'seat', order: 'all' },
        { kind: 'torque', order: 'all', target: '20 N·m', least: '19 N·m', most: '21 N·m' },
        {
          kind: 'action',
          instruction: 'Turn the crank and read what it takes.',
          turning: { most: '5 N·m', mostRise: '1 N·m' },
        },
      ],
    },
  ],
  steps: [{ id: 'rods-run', name: 'Rods', kind: 'run-procedure', procedure: 'rods' }],
})
