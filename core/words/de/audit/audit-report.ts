import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

const weights = { fault: 'Fehler ', doubt: 'Zweifel', accepted: 'angenommen' }

export const auditReport: Words['auditReport'] = {
  usage: `npm run audit -- DATEI …   Motordatenblätter lesen und sagen, was darin falsch und was fraglich ist

Ende mit 0, wenn nach jedem aufgebaut werden kann, mit 1, wenn nach einem nicht, mit 2, wenn keine Datei genannt ist.`,
  heading: ({ file, faults, doubts }) => {
    const found = [
      ...(faults > 0 ? [counted(faults, 'Fehler', 'Fehler')] : []),
      ...(doubts > 0 ? [counted(doubts, 'Zweifel', 'Zweifel')] : []),
    ]
    return `${file}: Aufbau ${faults > 0 ? 'nicht möglich' : 'möglich'}, ${found.length > 0 ? found.join(', ') : 'nichts fraglich'}`
  },
  because: ({ by, on, reason }) => `Am ${on} von ${by} angenommen, weil: ${reason}`,
  line: (facts) =>
    `  ${weights[facts.weight]}  ${facts.place === '' ? '' : `${facts.place}: `}${facts.sentence}`,
}
