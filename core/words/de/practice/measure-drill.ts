import type { Words } from '../../words.ts'

const gaugeUnits = { mm: 'mm', in: 'Zoll' }

export const measureDrill: Words['practice']['measure'] = {
  instruments: {
    feelers: 'Fühlerlehre',
    strip: 'Kunststoffmessfaden',
    micrometer: 'Bügelmessschraube',
    'bore-gauge': 'Innenmessgerät',
  },
  drawn: ({ instrument, unit }) => `${instrument}, in ${gaugeUnits[unit]}`,
  asks: {
    feelers: 'Diese Blätter gehen zusammen gerade noch hinein. Wie groß ist der Spalt?',
    strip: 'Skala verschieben, bis ein Feld so breit ist wie der Faden. Wie groß war das Spiel?',
    micrometer: 'Was zeigt die Bügelmessschraube?',
    'bore-gauge':
      'Das Messgerät wurde im Einstellring auf 0 gestellt und steht jetzt in der Bohrung, am Umkehrpunkt. Wie groß ist die Bohrung?',
  },
  hints: {
    feelers: null,
    strip: null,
    micrometer:
      'Hülse bis zur Trommelkante ablesen, dann die Trommel an der langen Linie, dann den Noniusstrich der Hülse, der einen Strich der Trommel trifft.',
    'bore-gauge': 'Eine kleinere Bohrung drückt den Taster hinein, der Zeiger geht im Uhrzeigersinn.',
  },
  zoom: 'Zwei Finger, Mausrad oder + und − vergrößern.',
  range: (of) => `${of.from} bis ${of.to} ${of.unit}`,
  dial: {
    count: ({ count, unit }) => `${count} ${unit}`,
    ring: ({ ring, unit }) => `Ring ${ring} ${unit}`,
  },
  moveScale: { up: 'Skala nach oben', down: 'Skala nach unten' },
  reads: ({ unit }) => `Messwert, in ${gaugeUnits[unit]}`,
  unreadable: 'Eine Zahl eintippen, mit Komma oder Punkt.',
  seen: {
    range: ({ range }) => `Bügelmessschraube ${range}`,
    sleeve: ({ at, unit }) => `Hülse: letzter sichtbarer Strich ist ${at} ${unit}`,
    thimble: ({ line }) => `Trommel: lange Linie steht bei ${line} oder darüber`,
    vernier: ({ line }) => `Nonius: Strich ${line} trifft einen Strich der Trommel`,
    ring: ({ ring, unit }) => `Innenmessgerät, auf 0 gestellt im Ring ${ring} ${unit}`,
    pointer: (of) =>
      of.way === 'none'
        ? 'Zeiger auf 0'
        : `Zeiger ${of.lines} ${of.lines === 1 ? 'Strich' : 'Striche'} zu ${of.count} ${of.unit} ` +
          `${of.way === 'clockwise' ? 'im' : 'gegen den'} Uhrzeigersinn von 0`,
  },
  strip: {
    beside: (of) => {
      const fits = {
        alike: 'so breit wie der Faden',
        narrower: 'schmaler als der Faden',
        wider: 'breiter als der Faden',
      }
      return `Neben dem Faden: Feld ${of.band} ${of.unit}, ${fits[of.fit]}`
    },
  },
  feeler: {
    blade: ({ blade, unit }) => `Blatt ${blade} ${unit}`,
  },
  off: (of) => `${of.by} ${of.unit} zu ${of.way === 'more' ? 'viel' : 'wenig'}.`,
  misreads: {
    turn: ({ turn, unit }) =>
      `Eine Umdrehung der Trommel ist ${turn} ${unit}: darauf achten, welcher Strich der Hülse der letzte sichtbare ist.`,
    base: ({ range }) =>
      `Diese Bügelmessschraube reicht von ${range}: Ihre Anzeige kommt zum unteren Ende hinzu.`,
    vernier:
      'Hülse und Trommel stimmen. Die letzte Ziffer ist die Nummer des Noniusstrichs, der einen Strich der Trommel trifft.',
    thimble: 'Die Hülse stimmt. An der Trommel zählt der Strich, den die lange Linie zuletzt passiert hat.',
    sign: 'Falsche Richtung: Im Uhrzeigersinn wurde der Taster hineingedrückt, die Bohrung ist kleiner als der Ring.',
    ring: 'Das zeigt die Uhr: Es wird zum Ring addiert oder von ihm abgezogen.',
    lines: 'Die Richtung stimmt. Striche ab der letzten Zahl zählen, die der Zeiger passiert hat.',
    blade: 'Ein Blatt fehlt in der Summe.',
    band: 'Ein anderes Feld der Skala. Je breiter der Faden, desto kleiner das Spiel.',
    other: 'Teil für Teil ablesen und zusammenzählen.',
  },
}
