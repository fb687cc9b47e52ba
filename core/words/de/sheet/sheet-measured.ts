import type { Words } from '../../words.ts'
import { engineParts } from '../engine-parts.ts'

const verdicts = {
  agrees: 'stimmt überein',
  'says-tighter': '! weniger als berechnet',
  'says-looser': '! mehr als berechnet',
  'not-compared': 'nicht verglichen',
}

export const sheetMeasured: Words['sheet']['measured'] = {
  title: 'Gemessen und entschieden',
  reground: ({ undersize }) => `Zapfen geschliffen: ${undersize}.`,
  sizeDecided: ({ undersize, reason, stamp }) =>
    `Entschieden: Zapfen gilt als ${undersize ?? engineParts.standardSize}: ${reason} (${stamp}).`,
  readings: (facts) =>
    `${facts.part}: ${facts.cells}; Teil bei ${facts.partAt}` +
    (facts.gaugeAt === null ? '' : `, Messgerät bei ${facts.gaugeAt}`) +
    (facts.sureTo === null ? '' : `, Messunsicherheit ± ${facts.sureTo}`) +
    `. Bei 20 °C: ${facts.least}, ${facts.mean}, ${facts.greatest} (Minimum, Mittel, Maximum); ` +
    `Unrundheit ${facts.outOfRound}, Konizität ${facts.taper}.` +
    (facts.sure ? ' Abweichender Messwert wurde hinterfragt: nachgemessen und richtig.' : ''),
  basisDecided: ({ by, reason, stamp }) =>
    `Entschieden: Es gelten die ${by === 'marks' ? 'Kennzeichen' : 'Messwerte'}: ${reason} (${stamp}).`,
  byReadings: 'Nach den Messwerten gewählt.',
  pinned: ({ reason }) => `Von Hand gewählt: ${reason}`,
  thread: ({ typed, verdict }) => `Kunststoffmessfaden ${typed}: ${verdicts[verdict]}.`,
  tray: ({ stamp, lines }) => `Vorrat (${stamp}): ${lines.join(', ')}.`,
  trayLine: (facts) =>
    `${facts.count} × ${facts.label}${facts.wall === null ? '' : ` (Wanddicke ${facts.wall})`}`,
}
