import type { Words } from '../../words.ts'

export const whatIf: Words['whatIf'] = {
  name: 'Was wäre wenn',
  about: 'Beliebige eigene Reihenfolge am Modell einer Verbindung, gegen die des Datenblatts. Ohne Wertung.',
  begin: 'Beginnen: Was wäre wenn',
  none: 'Nicht für diesen Motor: Was wäre wenn, weil kein Durchgang über zwei Schrauben geht.',
  procedure: 'Anziehvorgang',
  tap: 'In welcher Reihenfolge? Schrauben nacheinander antippen oder ein Muster wählen.',
  soFar: ({ done, of }) => `${done} von ${of} angetippt`,
  pattern: 'Muster wählen',
  patterns: {
    spiral: 'Spirale',
    'centre-out': 'von innen',
    crosswise: 'über Kreuz',
    'row-by-row': 'Reihe für Reihe',
    'ends-first': 'Enden zuerst',
    'end-to-end': 'Ende zu Ende',
    reversed: 'Datenblatt rückwärts',
  },
  takeBack: 'Letztes Antippen zurück',
  rest: 'Rest wie im Datenblatt',
  again: 'Andere Reihenfolge',
  calculating: 'Modell rechnet beide Reihenfolgen …',
  tapped: ({ place, where }) => `Angetippt als ${place}, ${where}`,
}
