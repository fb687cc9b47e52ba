import type { pastedTableWords as english } from '../../en/problems/pasted-table.ts'
import { counted } from '../formats.ts'

export const pastedTableWords: typeof english = {
  'table-empty': () => 'Darin ist keine Tabelle. Kopf und Zeilen kopieren und noch einmal einfügen.',
  'table-too-long': ({ rows, most }) =>
    `Die Tabelle hat ${counted(rows, 'Zeile', 'Zeilen')}, und ein Datenblatt hat höchstens ${most} Schrauben. Einen Teil davon einfügen.`,
  'table-cell-formula': ({ row, column, text }) =>
    `Zeile ${row}, Spalte ${column} ist eine Formel, „${text}“, und kein Wert. Nur die Werte kopieren und noch einmal einfügen.`,
  'table-cell-unread': ({ row, column, why }) =>
    `Zeile ${row}, Spalte ${column} ist nicht lesbar, und nichts ist übernommen. ${why}`,
  'chart-too-large': ({ cells, most }) =>
    `Die Tabelle hat ${counted(cells, 'Feld', 'Felder')}, und eine Auswahltabelle hat höchstens ${most}. Nur die Auswahltabelle einer Lagerung einfügen.`,
  'chart-head-unread': ({ found, housing, journal }) =>
    `Im Kopf der Tabelle steht ${found.join(', ') || 'nichts'}. Auf der einen Seite müssen die Bohrungskennzeichen ` +
    `${housing.join(', ')} stehen, auf der anderen die Zapfenkennzeichen ${journal.join(', ')}. Die Kennzeichen mit kopieren oder fehlende in der Lagerung ergänzen.`,
  'chart-row-unread': ({ row, found, known }) =>
    `Zeile ${row} beginnt mit „${found}“, und das ist kein Kennzeichen dieser Lagerung (${known.join(', ')}). Berichtigen oder das Kennzeichen zuerst ergänzen.`,
  'chart-row-twice': ({ row, mark }) =>
    `Zeile ${row} ist eine zweite für das Kennzeichen ${mark}. Eine davon weglassen.`,
  'chart-row-long': ({ row, found, most }) =>
    `Zeile ${row} hat ${counted(found, 'Feld', 'Felder')} und der Kopf ${counted(most, 'Kennzeichen', 'Kennzeichen')}. Nachsehen, ob ein Feld verrutscht ist.`,
  'chart-cell-unread': ({ row, column, found, known }) =>
    `Zeile ${row}, Spalte ${column} ${found === '' ? 'ist leer' : `hat „${found}“`}. Eine Klasse dieser Lagerung schreiben (${known.join(', ')}) oder zwei mit einem Strich dazwischen, die obere zuerst.`,
  'chart-rows-missing': ({ marks }) =>
    `Die Tabelle sagt nichts zu ${marks.length === 1 ? 'dem Kennzeichen' : 'den Kennzeichen'} ${marks.join(', ')}. Die ganze Auswahltabelle kopieren, auch die letzte Zeile und Spalte.`,
  'positions-columns-missing': ({ missing, found }) =>
    `Die Tabelle hat die Spalten ${found.join(', ')}, und ${missing.join(' und ')} ${missing.length === 1 ? 'fehlt' : 'fehlen'}. Zwei davon x und y nennen.`,
  'positions-group-unknown': ({ group }) =>
    `Eine Schraubengruppe „${group}“ gibt es nicht. Zuerst unter „Gruppen“ hinzufügen oder die Spalte weglassen.`,
  'positions-number-unread': ({ number }) =>
    `„${number}“ ist keine Nummer für die Zeichnung. Bis zu drei Ziffern schreiben, davor einen Buchstaben, wo einer ist.`,
}
