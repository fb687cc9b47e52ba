import type { Words } from '../../words.ts'
import { clock, minutesAndSeconds } from '../../formats/index.ts'

/** How an area is filled, so that colour is never alone. */
export const patterns = {
  plain: 'glatt',
  bars: 'Streifen',
  dots: 'Punkte',
  slant: 'schräge Streifen',
  grid: 'Gitter',
  waves: 'Wellen',
  crosses: 'Kreuze',
  steps: 'Stufen',
  rings: 'Ringe',
}

export const parts: Words['parts'] = {
  close: 'Schließen',
  cancel: 'Abbrechen',

  savedAs: ({ path }) => `Gespeichert als ${path}`,
  noPlaceChosen: 'Nicht gespeichert: kein Ort gewählt.',
  savedByBrowser: ({ fileName }) =>
    `Der Browser speichert ${fileName}. Wann und wo, steht in seiner Downloadliste.`,

  day: {
    day: 'Tag',
    month: 'Monat',
    year: 'Jahr',
    incomplete: 'Tag, Monat und Jahr wählen oder alle drei leer lassen.',
  },
  enginesAndBuilds: 'Motoren und Aufbauten',
  grade: ({ grade, pattern }) => `Klasse ${grade}, ${patterns[pattern]}`,
  openTimeLeft: ({ bead, seconds }) => `Dichtmittel, ${bead}: noch ${minutesAndSeconds(seconds)} Offenzeit`,
  openTimeOver: ({ bead, seconds }) =>
    `! Dichtmittel, ${bead}: Offenzeit seit ${minutesAndSeconds(seconds)} abgelaufen. Verbindung öffnen, reinigen und neue Dichtraupe auftragen.`,
  openTimeInShort: ({ seconds }) =>
    seconds > 0 ? `Dichtmittel ${clock(seconds)}` : `! Offenzeit +${clock(-seconds)}`,
  qrCode: ({ text }) => `QR-Code: ${text}`,
}
