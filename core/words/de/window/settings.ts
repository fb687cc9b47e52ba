import type { Words } from '../../words.ts'
import { fixed, plain } from '../formats.ts'

const fineness: Words['settings']['fineness'] = ({ pxPerMm }) =>
  `${fixed(pxPerMm, 2, 'px/mm')}, ${Math.round(pxPerMm * 25.4)} px je Zoll`

export const settings: Words['settings'] = {
  title: 'Bildschirm und Tasten',
  keys: 'Tasten',
  letterKeys: 'Tasten mit einem Zeichen',
  on: 'ein',
  off: 'aus',
  switchedOff: 'Ausgeschaltet.',
  screenSize: 'Größe dieses Bildschirms',
  measureWithCard:
    'Bankkarte mit der linken Kante an die linke Kante des Umrisses halten. Rechte Kante ziehen oder Pfeiltasten oder + und − ' +
    'drücken, bis der Umriss so groß ist wie die Karte (85,6 mm breit). Zahlen haben dann ihre wahre Größe.',
  cardWidth: 'Breite der Karte',
  fineness,
  notMeasured: (facts) => `Nicht gemessen, angenommen: ${fineness(facts)}.`,
  measured: (facts) => `✓ Gemessen: ${fineness(facts)}.`,
  asLargeAsCard: 'Umriss ist so groß wie die Karte',
  forgetMeasured: 'Messung verwerfen',

  look: 'Farben',
  looks: { 'as-the-system': 'wie das System', light: 'hell', dark: 'dunkel' },
  torqueIn: 'Drehmoment in',
  readFrom: 'Leseabstand',
  metres: ({ distance }) => `${distance === 0.5 ? '½' : plain(distance)} m`,
}
