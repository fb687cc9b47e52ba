import type { Words } from '../words.ts'
import { halves } from './halves.ts'

export const engineParts: Words['engineParts'] = {
  fastener: ({ number }) => `Schraube ${number}`,
  bearings: { main: 'Grundlager', 'big-end': 'Pleuellager', balance: 'Ausgleichswellenlager' },
  halves,
  either: {
    'upper-lower': `${halves.upper} oder ${halves.lower}`,
    'left-right': `${halves.left} oder ${halves.right}`,
  },
  standardSize: 'Standard',
  threadStates: {
    dry: 'trocken',
    oiled: 'geölt',
    sealant: 'mit Dichtmittel',
    'thread-lock': 'mit Schraubensicherung',
  },
}
