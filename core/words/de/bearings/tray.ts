import type { Words } from '../../words.ts'
import { engineParts } from '../engine-parts.ts'
import { patterns } from '../window/parts.ts'

const toOrder = 'zu bestellen'
const halves = { ...engineParts.halves, ...engineParts.either }

export const tray: Words['tray'] = {
  title: ({ number }) => `Bestellung und Etiketten ${number}`,
  foot: ({ number }) => `Bedplate, Bestellung und Etiketten ${number}`,
  orderCsv: 'Bestellliste als CSV',
  labelsCsv: 'Etiketten als CSV',
  of: (facts) => `${facts.engine}, ${facts.name}${facts.serial ? `, Seriennummer ${facts.serial}` : ''}.`,
  demo: 'DEMO: erfundene Werte. Nie einen echten Motor danach aufbauen.',
  labels: 'Etiketten',

  order: {
    title: 'Zu bestellende Lagerschalen',
    of: (facts) =>
      `${facts.fit}: ${
        facts.from === 'no-tray' ? 'kein Vorrat gezählt, daher alle aufgeführt' : 'was im Vorrat fehlt'
      }${facts.open.length > 0 ? `; noch offen: ${facts.open.join(', ')}` : ''}.`,
    nothing: 'Nichts zu bestellen.',
    fit: 'Lagerung',
    grade: 'Klasse',
    size: 'Maß',
    half: 'Hälfte',
    count: 'Anzahl',
    for: 'Für',
    halves,
  },

  label: {
    half: ({ position, half }) => `${position} ${halves[half]}`,
    grade: (facts) => [
      'Klasse ',
      { strong: facts.grade },
      `, ${patterns[facts.pattern]}${facts.undersize ? `, ${facts.undersize}` : ''}`,
    ],
    noClearance: 'Lagerspiel nicht berechnet',
    from: ({ place }) => `aus: ${place ?? toOrder}`,
    toOrder,
    build: ({ number, demo }) => `${number}${demo ? ' · DEMO' : ''}`,
  },
}
