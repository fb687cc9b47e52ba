import type { Words } from '../../words.ts'

type Measuring = Words['shells']['measuring']

const planesInWords = (planes: number): string =>
  planes === 1
    ? 'Eine Ebene, in der Mitte.'
    : `${planes} Ebenen längs der Achse, von der Steuerseite gezählt.`

function directionsInWords(directions: readonly number[]): string {
  const where = directions.map((degrees, index) => {
    const turned = Math.abs(Math.round(degrees))
    if (turned === 0) return `${index + 1} senkrecht nach oben`
    return `${index + 1} ${turned}° ${degrees < 0 ? 'links' : 'rechts'} der Senkrechten`
  })
  return `Messrichtungen, von der Steuerseite gesehen: ${where.join(', ')}.`
}

const threadVerdicts = {
  agrees: 'stimmt mit dem berechneten Lagerspiel überein',
  'says-tighter': 'zeigt weniger als berechnet',
  'says-looser': 'zeigt mehr als berechnet',
}

export const measuring: Measuring = {
  heading: ({ position }) => `${position} messen`,
  what: 'Was gemessen wird',
  parts: { housing: 'Bohrung', journal: 'Zapfen', thread: 'Kunststoffmessfaden' },
  noteReadings: 'Messwerte notieren',
  noteThread: 'Breite notieren',

  expected: (facts) =>
    `${facts.part}, ${facts.position}${facts.capTight ? ', Deckel angezogen' : ''}: erwartet ${facts.least} bis ${facts.most}.`,
  byMark: ({ mark, least, most }) => `Kennzeichen ${mark}: ${least} bis ${most}.`,
  picture: (facts) =>
    `${planesInWords(facts.planes)} ${directionsInWords(facts.directions)}` +
    (facts.part === 'housing' ? ' Keine liegt in der Trennfuge des Deckels.' : ''),
  alongAxis: 'ab Steuerseite',
  acrossAxis: 'von der Steuerseite',
  bareNumbersIn: 'Zahlen ohne Einheit in',
  direction: ({ direction }) => `Richtung ${direction}`,
  plane: ({ plane }) => `Ebene ${plane}`,
  cell: ({ plane, direction }) => `Ebene ${plane}, Richtung ${direction}`,
  partAt: 'Teiletemperatur',
  gaugeAt: 'Messgerätetemperatur',
  gaugeTrue: 'keine Korrektur',
  sureTo: 'Messunsicherheit ±',

  least: 'Minimum',
  mean: 'Mittel',
  greatest: 'Maximum',
  outOfRound: 'Unrundheit',
  taper: 'Konizität',
  taperPer: (facts) =>
    `Konizität: ${facts.taper} je ${facts.per}. Bei ${facts.apart} von der ersten zur letzten Ebene sind das insgesamt ${facts.allowed}.`,
  suspect: (facts) =>
    `Ebene ${facts.plane}, Richtung ${facts.direction}: ${facts.size}, die übrigen etwa ${facts.middle}. ` +
    'Nochmals messen.',

  allRight: 'Nachgemessen und richtig: Messwerte sichern',
  withdraw: 'Messwerte zurückziehen',
  whyWithdraw: 'Warum gelten diese Messwerte nicht?',
  withdrawThem: 'Zurückziehen',
  usualReasons: ['An anderem Lager gemessen', 'Messgerät falsch eingestellt'],

  thread: {
    how: ({ position }) =>
      `Kunststoffmessfaden, ${position}: bei eingelegten Schalen längs auf den Zapfen legen, Deckel anziehen, wieder ` +
      'abnehmen und die Breite an der Skala ablesen. Er wählt nie eine Schale; er findet Schmutz, lose Deckel und falsche Messwerte.',
    read: 'An der Skala abgelesen',
    step: 'Stufe der Skala',
    nothingToCompare: ({ width }) => `${width}: noch kein berechnetes Lagerspiel zum Vergleich.`,
    compared: (facts) =>
      `${facts.width}: ${threadVerdicts[facts.verdict]}` +
      (facts.verdict === 'agrees'
        ? '.'
        : `, um ${facts.off}. Nach Schmutz, losem Deckel oder falschem Messwert suchen.`),
  },
}
