import type { Words } from '../../words.ts'
import { numberAndKind } from './passes.ts'

const orders = {
  spec: 'wie im Datenblatt',
  own: 'eigene Reihenfolge',
  reversed: 'rückwärts',
  'centre-out': 'von innen nach außen',
  spiral: 'spiralförmig',
  crosswise: 'über Kreuz',
  'end-to-end': 'von Ende zu Ende',
}

export const clampMap: Words['clampMap'] = {
  title: ({ procedure }) => `Klemmkraftbild: ${procedure}`,
  backToBuild: 'Zurück zum Aufbau',
  teachingModel:
    'Ein Lehrmodell. Es zeigt, wie Schrauben einander Last abnehmen, nicht, was die einzelne Schraube hält.',
  differMost: (facts) => [
    { strong: `Größter Unterschied nach Durchgang ${numberAndKind(facts)}: ` },
    `Schraube ${facts.fastener} hält dann ${facts.firstLoad} kN (${orders[facts.first]}) ` +
      `gegenüber ${facts.secondLoad} kN (${orders[facts.second]}). Nach dem letzten Durchgang ` +
      (facts.atLast === null ? 'halten alle gleich viel.' : `höchstens ${facts.atLast} kN Unterschied.`),
  ],
  alike:
    'Nach keinem Durchgang unterscheidet sich eine Schraube zwischen beiden Reihenfolgen um 0,1 kN oder mehr.',
  sameOrder: 'Beide Seiten zeigen dieselbe Reihenfolge. Zum Vergleich eine andere wählen.',
  difference: ({ first, second, pull }) =>
    `Mehr oder weniger Kraft je Schraube, „${orders[second]}“ gegenüber „${orders[first]}“, nach ${pull} Anzügen`,
  differenceShown: ({ first, second }) =>
    `In kN, „${orders[second]}“ gegenüber „${orders[first]}“. Dunkler: größerer Unterschied der Flächenpressung.`,
  afterPass: 'Nach Durchgang',
  pass: numberAndKind,
  between: 'Zwischen den Flächen',
  materials: { metal: 'Metall', gasket: 'Dichtung' },
  orders,
  inOrder: ({ order }) => `Reihenfolge: ${orders[order]}`,
  whichOrder: ({ place }) => `Reihenfolge ${place}`,
  pulls: 'Anzug für Anzug',
  pull: (facts) =>
    facts.pass === null
      ? `Vor dem ersten von ${facts.of} Anzügen`
      : `Anzug ${facts.pull} von ${facts.of}, Durchgang ${facts.pass}: Schraube ` +
        facts.fasteners.map((fastener, index) => `${fastener} in Reihenfolge ${index + 1}`).join(', '),
  picture: ({ face, order, pull }) =>
    `Klemmkraftbild ${face}, Reihenfolge: ${orders[order]}, nach ${pull} Anzügen`,
  openAlong: ({ percent }) => `Offen auf ${percent} % der Trennfläche.`,
  hold: ({ least, most }) => `Angezogene Schrauben halten ${least} bis ${most} kN.`,
  nothingPulled: 'Noch nichts angezogen.',
  pressure: 'Flächenpressung',
  open: 'offen',
  megapascals: ({ least, most }) => `${least} bis ${most} MPa`,
  numbers: 'Im Kreis: Kraft der Schraube in kN. Gefüllt: eben angezogen.',
  table: ({ pull }) => `Kraft je Schraube nach ${pull} Anzügen, in kN`,
  fastener: 'Schraube',
  assumptions: 'Annahmen des Modells',
}
