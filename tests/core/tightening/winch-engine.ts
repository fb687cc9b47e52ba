import { engineSpec, type EngineSpec } from '../../../core/engine/index.ts'

const bolt = (id: string, number: string, group: string, face: string, x: number) => ({
  id,
  number,
  group,
  face,
  at: [`${x} mm`, '0 mm'],
  where: `place ${number}`,
})

const group = (id: string, name: string, reuse: 'reusable' | 'new-each-time') => ({
  id,
  name,
  thread: { diameter: '10 mm', pitch: '1.5 mm' },
  grip: '60 mm',
  propertyClass: '10.9',
  acrossFlats: '16 mm',
  threadState: 'oiled',
  reuse,
})

/**
 * An invented ferry winch engine with one cylinder: four cap bolts that may be used again, pulled in five
 * passes, and two rod bolts that may not, torqued and then turned.
 */
export const winchDraft = {
  bedplateSpec: 1,
  id: 'winch-1',
  name: 'Winch 1',
  summary: 'An invented ferry winch engine.',
  revision: '1',
  source: { kind: 'demo', note: 'Every number is invented.' },
  case: {
    family: 'caps',
    cylinders: 1,
    bankAngle: '0 °',
    bore: '80 mm',
    pitch: '90 mm',
    firstBoreAt: '60 mm',
    sides: { plus: 'pump side', minus: 'gear side' },
    saddles: [{ id: 'M1', at: '20 mm', width: '20 mm', diameter: '60 mm' }],
    faces: [
      { id: 'block', name: 'Block', shows: 'saddles', workedFrom: 'below' },
      { id: 'rods', name: 'Rods', shows: 'rods', workedFrom: 'below' },
    ],
  },
  fits: [],
  fastenerGroups: [
    group('cap-bolts', 'Cap bolts', 'reusable'),
    group('rod-bolts', 'Rod bolts', 'new-each-time'),
  ],
  fasteners: [
    bolt('cap-1', '1', 'cap-bolts', 'block', 10),
    bolt('cap-2', '2', 'cap-bolts', 'block', 20),
    bolt('cap-3', '3', 'cap-bolts', 'block', 30),
    bolt('cap-4', '4', 'cap-bolts', 'block', 40),
    bolt('rod-1', 'R1', 'rod-bolts', 'rods', 10),
    bolt('rod-2', 'R2', 'rod-bolts', 'rods', 20),
  ],
  procedures: [
    {
      id: 'caps',
      name: 'Main caps',
      face: 'block',
      orders: [
        { id: 'all', sequence: ['cap-1', 'cap-2', 'cap-3', 'cap-4'] },
        { id: 'first-two', sequence: ['cap-1', 'cap-2'] },
      ],
      passes: [
        { kind: 'seat', order: 'all' },
        {
          kind: 'torque',
          order: 'all',
          target: '24 N·m',
          least: '22.8 N·m',
          most: '25.2 N·m',
          others: [{ fasteners: ['cap-4'], target: '12 N·m' }],
        },
        { kind: 'action', instruction: 'Tap the crank back and forward.' },
        { kind: 'torque', order: 'all', target: '40 N·m' },
        { kind: 'recheck', order: 'first-two', target: '40 N·m', least: '38 N·m', most: '42 N·m' },
      ],
    },
    {
      id: 'rods',
      name: 'Rod bolts',
      face: 'rods',
      orders: [{ id: 'pair', sequence: ['rod-1', 'rod-2'] }],
      passes: [
        { kind: 'torque', order: 'pair', target: '15 N·m', least: '14 N·m', most: '16 N·m' },
        { kind: 'angle', order: 'pair', target: '60 °', least: '57 °', most: '63 °' },
      ],
    },
  ],
  steps: [
    { id: 'caps-run', name: 'Caps', kind: 'run-procedure', procedure: 'caps' },
    { id: 'rods-run', name: 'Rods', kind: 'run-procedure', procedure: 'rods' },
  ],
  cautions: [],
}

export const winchEngine: EngineSpec = engineSpec.parse(winchDraft)
