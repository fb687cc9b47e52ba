import type { Words } from '../../words.ts'
import { engineParts } from '../engine-parts.ts'
import { pairText } from '../halves.ts'
import { clearance } from './clearance.ts'
import { measuring } from './measuring.ts'
import { trayForm } from './tray-form.ts'

type Shells = Words['shells']

const { halves, standardSize } = engineParts
const sources = {
  marks: 'Kennzeichen',
  readings: 'Messwerte',
  declared: 'angegeben',
  measured: 'gemessen',
}

const basisName: Shells['dispute']['name'] = (basis) =>
  'size' in basis ? `${basis.size ?? standardSize} (${sources[basis.by]})` : sources[basis.by]

export const shells: Shells = {
  take: 'Diese Schalen nehmen',
  allowedWhenNew: ({ least, most }) => `Zulässiges Lagerspiel neu: ${least} bis ${most}.`,
  without: ({ positions }) => `Noch ohne Schalen: ${positions.join(', ')}.`,
  fromTray: 'Aus dem Vorrat.',
  toOrder: ({ lines }) =>
    'Zu bestellen: ' +
    lines
      .map(({ count, grade, undersize, half }) =>
        [`${count} ×`, grade, undersize, half === 'either' ? null : halves[half]].filter(Boolean).join(' '),
      )
      .join(', ') +
    '.',
  countTray: 'Aus dem Vorrat',
  countTrayAgain: 'Vorrat neu zählen',
  orderAndLabels: 'Bestellung und Etiketten',

  row: {
    marks: ({ housing, journal }) =>
      [housing, journal].map(({ name, mark }) => `${name} ${mark ?? '?'}`).join(', '),
    noShell: 'kein Vorschlag',
    noSizes: 'keine Maße im Datenblatt',
    measured: 'gemessen',
    verdict: ({ verdict }) => `! ${clearance.verdicts[verdict]}`,
    differ: {
      declared: '! angegebenes Maß und Messwerte weichen ab',
      mark: '! Kennzeichen und Messwerte weichen ab',
    },
    outOfShape: '! Formfehler',
    toOrder: ({ of }) => `zu bestellen: ${of.map((half) => halves[half]).join(', ')}`,
    pinned: 'von Hand gewählt',
  },

  pair: (pair) => pairText(pair),
  allowedPairs: ({ fromTray }) =>
    `Andere zulässige Paare, dünnstes zuerst${fromTray ? '; von Hand Gewähltes kommt aus dem Vorrat oder wird bestellt' : ''}`,
  measure: ({ position }) => `${position} messen`,
  release: 'Zurück zum Vorschlag',

  pin: {
    short: 'Wählen …',
    pin: ({ position, half }) => `Schale von Hand wählen: ${position} ${halves[half]}`,
    half: ({ half, grade, undersize }) =>
      `${halves[half]}: ${grade}${undersize === null ? '' : `, ${undersize}`}.`,
    pinnedTo: ({ to }) => `Von Hand gewählt, ${to}:`,
    what: ({ half }) => `Schale für die Hälfte ${halves[half]}`,
    whichever: ({ grade }) => `${grade}, beliebige Schale`,
    whyHalf: ({ what, half }) => `Warum immer ${what} für die Hälfte ${halves[half]}?`,
    whyPair: (pair) => `Warum stattdessen ${pairText(pair, ' und ')}?`,
    pinAt: ({ position }) => `Verwenden: ${position}`,
    usualReasons: ['Vorgeschlagene Klasse nicht am Lager', 'War vorher eingebaut und ist gut'],
  },

  dispute: {
    by: (basis) => `Nach ${basisName(basis)}:`,
    name: basisName,
    noShell: 'keine Schale',
    let: (basis) => `Verwenden: ${basisName(basis)}`,
    decided: (basis) => `Entschieden: ${basisName(basis)}.`,
    why: ({ basis, position }) => `${position}: Warum „${basisName(basis)}“ verwenden?`,
    usualReasons: {
      marks: ['Messgerät falsch eingestellt', 'Teil war verschmutzt'],
      readings: ['Zweimal gleich gemessen', 'Teil wurde ersetzt'],
      declared: ['An anderem Zapfen gemessen', 'Messgerät falsch eingestellt'],
      measured: ['Zweimal gleich gemessen', 'Kurbelwelle wurde geschliffen'],
    },
  },

  undersize: {
    question: 'Schliffmaß der Zapfen',
    journal: 'Zapfen:',
    everywhere: ({ fit }) => `alle Zapfen: ${fit}`,
    walls: (facts) =>
      `Schalen für ${facts.undersize} laut Datenblatt: ` +
      `${facts.walls.map(({ grade, least, most }) => `${grade}, ${least} bis ${most}`).join('; ')}.`,
  },

  clearance: {
    picture: ({ cold, hot }) =>
      `Lagerspiel ${cold} zwischen den Grenzen${hot === null ? '' : `; warm ${hot}`}`,
    legend: (facts) =>
      `Kasten: Grenzen neu${facts.guarded ? ', schraffiert im Bereich der Messunsicherheit' : ''}; Punkte: Sollwert. ` +
      `Dünne Linie: ungünstigster Fall; dick: wahrscheinlich; Strich: Nennwert${facts.hot ? '; gestrichelt: warm' : ''}` +
      `${facts.serviceLimit ? '; Linie rechts: Verschleißgrenze' : ''}.`,
    worst: ({ worst, likely }) => `Ungünstigster Fall ${worst}, wahrscheinlich ${likely}.`,
    fromReadings: (facts) =>
      `Aus Messwerten: Minimum ${facts.least}, Mittel ${facts.mean}, Maximum ${facts.greatest}.`,
    notSure: 'Messunsicherheit unbekannt: Nahe den Grenzen beweisen diese Messwerte nichts.',
    sureTo: ({ uncertainty, proved }) =>
      `Messunsicherheit ± ${uncertainty}: erst ab ${proved} nachgewiesen in den Grenzen.`,
    hot: ({ at, clearance: hot }) => `Warm, bei ${at}: ${hot}.`,
    serviceLimit: ({ limit, wear }) => `Verschleißgrenze ${limit}: ${clearance.wear[wear]}.`,
  },

  measuring,
  tray: trayForm,
}
