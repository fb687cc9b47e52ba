import type { Words } from '../../words.ts'
import { pairText } from '../halves.ts'

const nearestOf = (of: number) => `Von ${of} zulässigen Paaren in den Grenzen am nächsten am Sollwert`

export const proposals: Words['proposals'] = {
  'by-chart': ({ housing, journal }) =>
    `Laut Auswahltabelle für Bohrungskennzeichen ${housing} und Zapfenkennzeichen ${journal}.`,
  'by-bands': ({ of, housing, journal }) =>
    `${nearestOf(of)}, bei Bohrungskennzeichen ${housing} und Zapfenkennzeichen ${journal}.`,
  'by-readings': ({ of }) => `${nearestOf(of)}, bei kleinster Bohrung und größtem Zapfen, wie gemessen.`,
  'halves-differ': (pair) => `Die Hälften sind verschieden: ${pairText(pair)}.`,
  'allowed-beside-pinned': (_) => 'Zulässig neben der von Hand gewählten Hälfte; Lagerspiel unbekannt.',
  'nearest-beside-pinned': (_) =>
    'Von den zulässigen Paaren mit der von Hand gewählten Hälfte am nächsten am Sollwert.',
  'in-tray': ({ label }) => `Im Vorrat: ${label}.`,
  'not-in-tray': (_) => 'Nicht im Vorrat: zu bestellen.',
  'nearest-of-all': (_) => 'Über alle Lager zusammen am nächsten am Sollwert.',
  'nearest-of-tried': (_) =>
    'Über alle Lager zusammen am nächsten am Sollwert, soweit durchprobiert; für alles sind es zu viele ' +
    'Einzelschalen.',
}
