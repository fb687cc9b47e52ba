import type { Words } from '../words.ts'
import { halfWords } from './halves.ts'

export const engineParts: Words['engineParts'] = {
  fastener: ({ number }) => `Fijación ${number}`,
  bearings: { main: 'Apoyo', 'big-end': 'Cabeza de biela', balance: 'Cojinete de equilibrado' },
  ...halfWords,
  standardSize: 'medida estándar',
  threadStates: {
    dry: 'en seco',
    oiled: 'aceitada',
    sealant: 'con sellador',
    'thread-lock': 'con fijador de roscas',
  },
}
