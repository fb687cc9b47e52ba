import type { Words } from '../../words.ts'
import { engineParts } from '../engine-parts.ts'

const sides = { above: 'oben', below: 'unten' }

export const benchCard: Words['benchCard'] = {
  foot: (facts) =>
    `Bedplate-Werkbankkarte · ${facts.engine}, Revision ${facts.revision} · ${facts.procedure}`,
  of: (facts) =>
    `${facts.engine}, Datenblatt Revision ${facts.revision}. ${facts.face}, von ${sides[facts.seenFrom]} gesehen.`,
  demo: ({ note }) => `DEMO: ${note}`,
  group: (facts) =>
    `${facts.group}: Gewinde ${engineParts.threadStates[facts.threads]}` +
    `${facts.newEachTime ? ', jedes Mal neu' : ''}.`,
  prevailing: (facts) =>
    `${facts.group}: Klemmdrehmoment bis ${facts.most} beim Eindrehen. ` +
    {
      included: 'Im Drehmoment enthalten: nichts zuschlagen.',
      'not-said': 'Ob es im Drehmoment enthalten ist, ist nicht angegeben: nichts zuschlagen.',
      'on-top':
        'Im Drehmoment nicht enthalten. An jeder vor der Auflage ablesen, ohne Adapter am Schlüssel, aufschreiben und zum ' +
        'Drehmoment und zu seinen Grenzen addieren. Braucht eine mehr, herausdrehen und beide Gewinde ansehen.',
    }[facts.counts],
  runsDownAt: ({ group, unit }) => `${group}: Klemmdrehmoment in ${unit}:`,
  ownOrder: ({ reason, ofMaker: givenOrder }) => [
    { strong: '! Eigene Reihenfolge, nicht die des Herstellers.' },
    ` ${reason === null ? 'Noch nicht aufgezeichnet.' : `Grund: ${reason}.`} ` +
      `Reihenfolge des Herstellers: ${givenOrder.map((numbers) => numbers.join(', ')).join('; ')}.`,
  ],
  serial: 'Seriennr.',
  name: 'Name',
  date: 'Datum',
  wrench: 'Schlüssel-Nr.',
  passes: 'Durchgänge: jede Schraube nach dem Anziehen abhaken',
  capByCap: 'Deckel für Deckel: erst alle Durchgänge des einen abhaken, dann den nächsten beginnen',
  gap: 'Spalt',
  done: 'erledigt',
  drawing: ({ face, procedure }) => `${face}: ${procedure}`,

  turnBy: ({ angle }) => `Weiterdrehen um ${angle}`,
  turn: (facts) =>
    `${facts.angle} drehen: ${facts.flats}. Zulässig ${facts.least} bis ${facts.most}. Gestrichelt: Anfang der Markierung.`,
}
