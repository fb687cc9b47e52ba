import type { SeenFace } from '../../en/drawing/drawing.ts'
import type { Words } from '../../words.ts'

const sides = { above: 'von oben', below: 'von unten' }
const noseAt = { left: 'links', top: 'oben', right: 'rechts', bottom: 'unten' }

function seenFrom(from: SeenFace['from']): string {
  if (!('upsideDown' in from)) return `${sides[from.of]} gesehen`
  const end =
    from.of === 'side'
      ? `gesehen von: ${from.side}`
      : `von der ${from.of === 'nose' ? 'Steuerseite' : 'Abtriebsseite'} gesehen`
  return `${end}${from.upsideDown ? ', kopfstehend' : ''}`
}

const faceParts = {
  seal: 'Wellendichtring',
  'two-piece-seal': 'Zweiteiliger Wellendichtring',
  plug: 'Verschlussstopfen',
  'check-valve': 'Rückschlagventil',
  strainer: 'Ölsieb',
}

export const drawing: Words['drawing'] = {
  nose: 'STEUERSEITE',
  driveEnd: 'ABTRIEB',
  bore: ({ numbers }) => `Zyl. ${numbers.join(', ')}`,
  thrust: 'Anlauf',
  noSealant: 'kein Dichtmittel',
  halfOf: ({ bearing, half }) => `${bearing} ${half}`,
  view: ({ face, from, nose }) =>
    `${face}, ${seenFrom(from)}${nose === null ? '' : `, Steuerseite ${noseAt[nose]}`}`,
  notToScaleAcross: ({ view }) => `${view}. Quer nicht maßstäblich`,
  outsideLimits: 'außerhalb der Grenzen',

  pinStands: { towards: 'zum Betrachter', away: 'vom Betrachter weg' },
  orientations: {
    upright: 'aufrecht',
    'upside-down': 'kopfstehend',
    flat: 'flach',
    'turned-over': 'flach, gewendet',
  },
  onItsSide: ({ side }) => `auf der Seite: ${side}`,

  list: {
    nose: 'Steuerseite, vorderes Ende der Kurbelwelle',
    driveEnd: 'Abtriebsseite',
    fastener: ({ number, where }) => `Schraube ${number}, ${where}`,
    fastenerState: (facts) =>
      `${facts.fastener}: ${facts.state}${facts.more === null ? '' : `, ${facts.more}`}`,
    fastenerStates: {
      waiting: 'wartet',
      next: 'als Nächste',
      'after-next': 'als Übernächste',
      'partly-done': 'teilweise angezogen',
      done: 'fertig',
      flagged: 'beanstandet',
    },
    shareOfPasses: ({ percent }) => `${percent} % der Durchgänge`,
    half: (facts) => `${facts.bearing} ${facts.id} ${facts.half}`,
    halfState: ({ half, parts }) => `${half}: ${parts.join(', ')}`,
    grade: ({ grade }) => `Klasse ${grade}`,
    shellNotChosen: 'Schale nicht gewählt',
    fitted: { fitted: 'eingelegt', next: 'als Nächstes einzulegen', 'not-fitted': 'nicht eingelegt' },
    thrust: ({ saddle }) => `Anlaufscheiben an Lagersitz ${saddle}`,
    bead: ({ name, isLaid }) => `${name}: ${isLaid ? 'aufgetragen' : 'aufzutragen'}`,
    keepOut: ({ name }) => `${name}: kein Dichtmittel`,
    passage: ({ name }) => `Ölkanal, ${name}`,
    dowel: ({ number }) => `Passstift ${number}`,
    bore: ({ number }) => `Zylinderbohrung ${number}`,
    journal: ({ id }) => `Grundlagerzapfen ${id}`,
    pin: ({ rods, stands }) => `Hubzapfen von ${rods.join(' und ')}: ${stands}`,
    wheels: {
      gear: 'Zahnrad auf der Kurbelwelle',
      chain: 'Kettenrad auf der Kurbelwelle',
      belt: 'Riemenrad auf der Kurbelwelle',
    },
    facePart: ({ kind, name }) => `${faceParts[kind]}, ${name}`,
    gasket: 'Dichtung entlang der Kante der Fläche',
    opening: ({ number }) => `Öffnung ${number}`,
    withNotes: ({ text, notes }) => [text, ...notes].join('; '),
  },

  protractor: (facts) =>
    `Winkelmesser: Griff beginnt bei ${facts.start} (${facts.startClock} Uhr) und kommt nach ${facts.turned} ` +
    `${facts.sense === 'clockwise' ? 'im' : 'gegen den'} Uhrzeigersinn auf ${facts.end} (${facts.endClock} Uhr).`,
}
