import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

const weights = { fault: 'fallo', doubt: 'duda ', accepted: 'aceptada' }

export const auditReport: Words['auditReport'] = {
  usage: `npm run audit -- FICHERO …   lee fichas de motores y dice qué está mal en ellas y qué es dudoso

Termina con 0 si todas las fichas se pueden montar, con 1 si alguna no se puede, y con 2 si no se indica ningún fichero.`,
  heading: ({ file, faults, doubts }) => {
    const found = [
      ...(faults > 0 ? [counted(faults, 'fallo', 'fallos')] : []),
      ...(doubts > 0 ? [counted(doubts, 'duda', 'dudas')] : []),
    ]
    return `${file}: ${faults > 0 ? 'no se puede' : 'se puede'} montar, ${found.length > 0 ? found.join(', ') : 'nada dudoso'}`
  },
  because: ({ by, on, reason }) => `Aceptada por ${by} el ${on}, porque: ${reason}`,
  line: ({ weight, place, sentence }) =>
    `  ${weights[weight]}  ${place === '' ? '' : `${place}: `}${sentence}`,
}
