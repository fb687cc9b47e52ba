import type { Input } from '../../../core/contract/index.ts'

/** An engine begun from a family, for which no demo has to be read. */
export const bareDraft: Input<'drafts.begin'> = {
  ...{ person: 'Ana Ruiz', name: 'Heron 4', from: 'Heron workshop manual, 2nd edition' },
  origin: {
    kind: 'bare',
    parameters: {
      ...{ family: 'caps', cylinders: 4, bankAngle: '0 °', bore: '82 mm', pitch: '90 mm', mains: 5 },
      ...{ mainDiameter: '58 mm', mainWidth: '24 mm', thrustMain: 3, rods: null },
    },
  },
}
