import type { Words } from '../../words.ts'

const grown = {
  'centre-out': 'von der Mitte nach außen, wechselseitig',
  spiral: 'spiralförmig von der Mitte nach außen',
  crosswise: 'über Kreuz auf einem Kreis',
  'end-to-end': 'von einem Ende zum anderen',
}

export const order: Words['order'] = {
  title: 'Anzugsreihenfolge',
  given: (facts) => [
    { strong: 'Reihenfolge:' },
    ` ${facts.numbers.join(', ')}${facts.cut ? ' …' : ''}; ` +
      `${facts.pattern === null ? 'wie im Handbuch nummeriert' : grown[facts.pattern]}.`,
  ],

  own: {
    title: 'Eigene Reihenfolge',
    tapOrType: 'Schrauben der Reihe nach antippen oder Nummern eintippen',
    asMaker: 'leer: Reihenfolge des Herstellers',
    allIn: ({ count }) => `✓ Alle ${count} sind eingereiht.`,
    isMaker: 'Das ist die Reihenfolge des Herstellers.',
    undo: 'Letzte zurück',
    clear: 'Leeren',
    fillWith: 'Auffüllen',
    maker: 'Hersteller',
    patterns: {
      'centre-out': 'Von innen',
      spiral: 'Spirale',
      crosswise: 'Über Kreuz',
      'end-to-end': 'Ende zu Ende',
    },
    allPulls: ({ count }) => `Alle ${count} Anzüge in ihrer Reihenfolge`,
    pullsOfPass: ({ pass }) => `Anzüge in Durchgang ${pass}`,
    once: 'einmal',
    compare: 'Klemmkraftbilder vergleichen …',
    caution:
      'Die Reihenfolge des Herstellers geht vor. Eine eigene wird als Abweichung mit Begründung aufgezeichnet.',
    forOwnEngine: 'Für die Datenblatt-Datei eines eigenen Motors',
    forSpec: 'Für die Datenblatt-Datei',
  },
}
