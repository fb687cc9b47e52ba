import type { recordWords as pattern } from '../../en/problems/record.ts'
import type { Table } from '../../table.ts'
import { things } from './named-thing.ts'
import { day, dayAndTime } from '../formats.ts'

const outOfPlace = {
  gone: 'gelöscht oder verschoben',
  replaced: 'durch eine andere Datei ersetzt',
  shortened: 'abgeschnitten',
}

const unread = {
  folder: 'Ordner der Motordatenblätter nicht lesbar: Leserecht geben oder einen anderen wählen',
  missing: 'nicht vorhanden. Namen prüfen',
  'is-folder': 'ein Ordner. Die Dateien darin nennen',
  'not-a-file': 'keine Textdatei, also kein Motordatenblatt',
  'too-large': 'größer als jedes Motordatenblatt',
  dangling: 'führt zu einer Datei, die fehlt. Datei zurücklegen oder Verknüpfung entfernen',
  'not-text': 'kein Text in UTF-8. So neu speichern',
  closed: 'nicht lesbar. Diesem Benutzer das Leserecht geben',
}

const witnessNames = { sheet: 'Montageblatt', export: 'Export', backup: 'Sicherung' }

const columnNames: Readonly<Record<string, string>> = {
  year: 'Jahr',
  name: 'Name',
  serial: 'Seriennummer',
  started_at_utc: 'Beginn',
  finished: 'ob abgeschlossen',
  voided: 'ob gültig',
  flagged: 'ob beanstandet',
}

const rowFaults: Readonly<Record<string, string>> = {
  id: 'keine gültige Kennung',
  startedAt: 'keine gültige Zeit des Beginns',
  lastAt: 'keine gültige Zeit des letzten Eintrags',
}

export const recordWords: Table<typeof pattern> = {
  'record-not-in-place': ({ file, fault }) =>
    `Nicht gesichert: ${file} wurde bei laufendem Programm ${outOfPlace[fault]}. Nichts kann mehr bestätigt werden. Datei zurücklegen oder jetzt, vor dem Schließen des Programms, eine Kopie des Arbeitsspeichers schreiben.`,
  'record-not-missing': (_) =>
    'Eine Aufzeichnung ist vorhanden, es wird keine leere begonnen. Fenster neu ansehen.',
  'clock-unusable': ({ at }) =>
    `Nicht gesichert: Die Uhr dieses Rechners zeigt ${dayAndTime(at)}, das ist nicht aufzeichenbar. Uhr stellen, dann erneut bestätigen.`,

  'build-spec-altered': (_) =>
    'Das Datenblatt dieses Aufbaus wurde in der Aufzeichnung verändert: Sein Text ist nicht mehr der, den der erste Eintrag nennt. Nichts kann hinzugefügt werden, auf seine Werte ist kein Verlass. Eine Sicherung einsetzen.',
  'build-spec-swapped': (_) =>
    'In der Liste der Aufbauten beruht dieser Aufbau auf einem anderen Datenblatt als im ersten Eintrag. Gezeigt wird das des ersten Eintrags. Nichts kann hinzugefügt werden, bis die Listen aus den Einträgen neu angelegt sind (Seite „Aufzeichnung und Sicherungen“).',
  'build-unlisted': (_) =>
    'Die Einträge dieses Aufbaus sind vorhanden, in der Liste der Aufbauten fehlt er. Listen aus den Einträgen neu anlegen, auf der Seite „Aufzeichnung und Sicherungen“.',
  'build-list-differs': ({ columns }) =>
    `Die Liste der Aufbauten weicht bei diesem Aufbau von den Einträgen ab (${columns.map((each) => columnNames[each] ?? each).join(', ')}). Es gelten die Einträge. Listen daraus neu anlegen.`,
  'build-number-missing': ({ number }) =>
    `Die Nummer ${number} gehörte einem Aufbau, der nicht mehr in der Aufzeichnung ist. Eine Sicherung mit ihm einsetzen oder seinen Export neu importieren.`,
  'build-entry-unreadable': ({ entry }) =>
    `Eintrag ${entry} dieses Aufbaus hat eine Zeit, einen Namen oder eine Zahl, wie kein Bedplate sie schreibt. Bis dorthin lesbar, nichts kann hinzugefügt werden. Mit gedrucktem Montageblatt oder Sicherung vergleichen.`,
  'build-row-unreadable': ({ columns }) =>
    `Diese Zeile der Liste ist nicht lesbar: ${columns.map((column) => rowFaults[column] ?? column).join(', ')}. Andere Aufbauten sind nicht betroffen. Archiv überprüfen und Listen aus den Einträgen neu anlegen.`,
  'witness-differs': (facts) =>
    facts.kind === 'backup'
      ? `Eine Sicherung vom ${day(facts.at)} hat ${facts.entries} Einträge, die Aufzeichnung jetzt weniger. Entweder wurde seither eine ältere Sicherung eingesetzt, oder Einträge wurden entfernt.`
      : `${witnessNames[facts.kind]} vom ${day(facts.at)}: Kopfcode ${facts.head.slice(0, 16)} nach Eintrag ${facts.entries}; der Aufbau hier hat einen anderen oder endet vorher. Entweder wurde seither eine ältere Sicherung eingesetzt, oder der Aufbau wurde neu geschrieben. Beides vergleichen.`,

  'verify-file-unknown': ({ name }) =>
    `„${name}“ ist weder Export noch Sicherung und hat keinen Kopfcode im Namen. Exportierten Aufbau oder Sicherung hier ablegen oder den Code vom Montageblatt eintippen.`,
  'verify-code-unknown': ({ code }) =>
    `Kein Eintrag eines Aufbaus hier hat den Kopfcode ${code}. Prüfen, ob er wie auf dem Montageblatt eingetippt ist. Wenn ja, wurde der Aufbau verändert, entfernt oder war nie in dieser Aufzeichnung.`,
  'verify-build-missing': ({ name }) => `${name} ist hier nicht aufgezeichnet, weder ganz noch teilweise.`,
  'verify-build-differs': ({ entry }) =>
    `Eintrag ${entry} ist hier ein anderer als in der Datei. Einer von beiden wurde nach der Bestätigung neu geschrieben.`,
  'verify-build-shorter': ({ entries, there }) =>
    `Der Aufbau endet hier nach Eintrag ${entries}; die Datei hat ${there}. Hier fehlen Einträge, oder eine ältere Sicherung wurde eingesetzt.`,

  'backup-carries-broken': ({ count }) =>
    `Sicherung angelegt; nicht wie bestätigt darin: ${count}. In der Liste ist sie so gekennzeichnet, die letzte einwandfreie bleibt daneben erhalten. Archiv überprüfen, um die Stelle zu finden.`,

  'spec-file-unread': ({ file, reason, code }) =>
    `${file}: ${unread[reason]}${code === '' ? '' : ` (${code})`}.`,
  'import-busy': (_) => 'Eine andere Datei wird gerade importiert. Abwarten, dann diese erneut wählen.',
  'import-against-rules': ({ entry, why }) =>
    `Eintrag ${entry} der Datei hätte dort nicht bestätigt werden können, nichts wurde importiert: ${why}`,
  'entry-not-first': (_) => 'Er beginnt keinen Aufbau.',
  'entry-out-of-place': (_) => 'Er folgt nur zusammen mit dem vorigen Eintrag, und der führte nicht zu ihm.',
  'entry-not-as-decided': (_) => 'Sein Inhalt folgt nicht aus den vorigen Einträgen.',
  'name-unreadable': ({ what }) =>
    `${things[what]}: enthält unsichtbare oder unlesbare Zeichen (Zeilenumbruch, Steuerzeichen, Zeichen für die Schreibrichtung) oder gar nichts Sichtbares. Von Hand neu eintippen.`,
  'request-too-large': (_) =>
    'Das Gesendete ist größer als alles, was dieses Programm verlangt. Nichts wurde geändert.',
}
