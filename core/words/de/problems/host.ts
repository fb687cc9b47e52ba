import type { hostWords as pattern } from '../../en/problems/host.ts'
import type { Table } from '../../table.ts'
import { things } from './named-thing.ts'

const damages = {
  empty: 'sie ist leer',
  pages: 'ihre Seiten passen nicht zusammen',
  disk: 'der Datenträger gibt sie nicht vollständig zurück',
}

const closedFolder = {
  'no-right': 'Diesem Benutzer das Schreibrecht geben.',
  'read-only': 'Der Datenträger ist nur lesbar: beschreibbar machen lassen.',
  dangling:
    'Eine Verknüpfung auf dem Weg führt ins Leere: den zugehörigen Datenträger anschließen oder die Verknüpfung reparieren.',
  'too-long': 'Der Pfad ist für das System zu lang: Ordner näher an die Wurzel verschieben.',
}

const noBackup = {
  full: 'Datenträger voll.',
  gone: 'Ordner fehlt; ist das Laufwerk oder die Freigabe verbunden?',
  closed: 'Ordner nicht beschreibbar.',
}

const wrongFolder = {
  relative: 'ganzen Pfad angeben, ab der Wurzel oder dem Laufwerk.',
  missing: 'kein solcher Ordner vorhanden.',
  closed: 'nicht beschreibbar.',
  own: 'es ist der Datenordner oder liegt darin und ginge mit ihm verloren.',
}

const notSaved = {
  'disk-full': 'Datenträger voll.',
  'read-only': 'Datenordner nicht beschreibbar.',
  'disk-fault': 'Datenträger hat nicht angenommen.',
}

export const hostWords: Table<typeof pattern> = {
  'own-fault': (_) =>
    'Interner Fehler, Bedplate beendet sich. Bestätigtes ist gesichert. Neu starten; hilft das nicht, mit --local starten und den Betreuer verständigen.',
  'still-ending': ({ folder }) => `Ein Bedplate auf ${folder} beendet sich noch. Abwarten, dann neu starten.`,
  'host-lost': (_) =>
    'Das Programm hinter diesem Fenster ist beendet. Bestätigtes ist gesichert. Zum Fortfahren Bedplate neu starten.',
  'host-misunderstood': (_) =>
    'Das Programm hinter diesem Fenster gab eine unbekannte Antwort. Fenster schließen und Bedplate neu starten.',
  'program-fault': (_) =>
    'Interner Fehler, nichts wurde geändert. Nochmals versuchen; kommt er wieder, Bedplate neu starten und den Betreuer verständigen.',
  'request-unknown': ({ name }) =>
    `Die Anfrage „${name}“ ist hier nicht bekannt. Fenster schließen und Bedplate neu starten.`,
  'request-unreadable': ({ fault }) =>
    `Nichts geändert, die Angabe hat einen Fehler: ${fault}${fault.endsWith('.') ? '' : '.'} Berichtigen und erneut senden.`,
  'text-broken': (_) => 'Der Text enthält ein halbes Zeichen, wie nach fehlerhaftem Einfügen. Neu eintippen.',

  'data-folder-closed': ({ folder, why }) =>
    `Datenordner ${folder} nicht beschreibbar. ${closedFolder[why]} Oder mit --data einen anderen Ordner wählen.`,
  'data-folder-is-file': ({ folder }) =>
    `Unter ${folder} lassen sich keine Aufbauten ablegen: Das ist eine Datei oder liegt in einer; nötig ist ein Ordner. Mit --data einen anderen wählen.`,
  'record-in-use': ({ folder }) =>
    `Ein anderes Bedplate läuft schon auf dem Datenordner ${folder}. Zu dessen Fenster gehen oder es zuerst beenden.`,
  'record-newer': ({ file, version, known }) =>
    `Die Aufzeichnung ${file} stammt von einem neueren Bedplate (Tabellenversion ${version}; hier bekannt ${known}). Sie blieb unverändert. Das neuere Programm starten.`,
  'record-of-another-program': ({ file }) =>
    `${file} ist eine Datenbank eines anderen Programms und blieb unverändert. Wegräumen oder mit --data einen anderen Ordner wählen.`,
  'record-not-a-database': ({ file }) =>
    `${file} ist keine Bedplate-Aufzeichnung, oder ihre erste Seite ist zerstört. Unverändert. Eine Sicherung einsetzen oder die Datei wegräumen und neu beginnen.`,
  'record-damaged': ({ file, found }) =>
    `Die Aufzeichnung ${file} ist beschädigt (${typeof found === 'string' ? damages[found] : found.check}). Sie blieb unverändert. Eine Sicherung einsetzen oder eine Kopie der Datei untersuchen lassen.`,
  'record-schema-altered': ({ file }) =>
    `Die Tabellen der Aufzeichnung ${file} wurden nicht von Bedplate verändert, auf ihren Schutz ist kein Verlass. Sie blieb unverändert. Eine Sicherung einsetzen.`,
  'record-missing': ({ file }) =>
    `Die Aufzeichnung ${file} fehlt, obwohl hier eine war. Zurücklegen oder eine Sicherung einsetzen. Nur leer beginnen, wenn ihr Inhalt nicht mehr gebraucht wird.`,
  'record-being-replaced': (_) => 'Eine Sicherung wird gerade eingesetzt. Kurz warten, dann wiederholen.',
  'pdf-by-browser': (_) =>
    'Im Browserfenster erzeugt der Browser das PDF: drucken und als Drucker „Als PDF speichern“ wählen.',
  'pdf-not-saved': (_) => 'PDF nicht gespeichert: dort nicht beschreibbar. Anderen Ordner wählen.',
  'save-by-browser': (_) => 'Im Browserfenster speichert der Browser: als Download speichern.',
  'file-not-saved': ({ file }) =>
    `${file} nicht gespeichert: dort nicht beschreibbar. In einem anderen Ordner speichern.`,
  'record-not-saved': ({ reason }) =>
    `Nicht gesichert: ${notSaved[reason]} Bis dahin gilt nichts als bestätigt. Beheben, dann erneut bestätigen.`,

  'backup-not-saved': ({ folder, reason }) =>
    `Keine Sicherung in ${folder} abgelegt: ${noBackup[reason]} Die Aufzeichnung selbst ist unverändert. Beheben, dann sichern.`,
  'backup-not-sound': (_) =>
    'Eine Sicherung wurde angelegt, besteht aber die Prüfung nicht und zählt daher nicht: Etwas in der Aufzeichnung ist nicht wie bestätigt. Ältere Sicherungen bleiben erhalten. Archiv überprüfen, um den Aufbau zu finden.',
  'backup-lost': ({ folder }) =>
    `Die Sicherung in ${folder} liest sich nicht zurück wie geschrieben und zählt nicht. Datenträger untersuchen lassen und anderen Ordner wählen.`,
  'backup-unknown': (_) => 'Diese Sicherung gibt es nicht mehr. Liste neu ansehen und eine andere wählen.',
  'backup-unusable': ({ name }) =>
    `Die Sicherung ${name} ist beschädigt und wurde nicht eingesetzt; die Aufzeichnung ist unverändert. Eine andere wählen.`,
  'backup-folder-wrong': ({ folder, fault }) =>
    `„${folder}“ taugt nicht für Sicherungen: ${wrongFolder[fault]} Anderen Ordner wählen.`,

  'build-unknown': (_) =>
    'Dieser Aufbau ist nicht in der Aufzeichnung. Liste der Aufbauten öffnen und neu wählen.',
  'sample-not-needed': (_) =>
    'Dieser Demo-Aufbau entsteht nur einmal, und nur, wo alle Aufbauten von Demo-Motoren sind. Einen aus der Liste öffnen.',
  'build-moved-on': ({ last }) =>
    `Zu diesem Aufbau kam anderswo etwas hinzu; letzter Eintrag ist jetzt Nummer ${last}. Änderung ansehen, dann bei Bedarf wiederholen.`,
  'build-of-earlier-rules': ({ entry }) =>
    `Eintrag ${entry} dieses importierten Aufbaus war in einem früheren Bedplate zulässig, in diesem nicht. Lesen und Drucken möglich, Hinzufügen nicht. Vor Gebrauch ansehen, was dort gemacht wurde.`,
  'build-newer': ({ entry }) =>
    `Eintrag ${entry} dieses Aufbaus stammt von einem neueren Bedplate. Bis dorthin lesbar; mit dieser Version kann nichts hinzugefügt werden.`,
  'build-chain-broken': ({ entry }) =>
    `Eintrag ${entry} dieses Aufbaus ist nicht wie bestätigt, oder davor fehlt einer. Nichts kann hinzugefügt werden. Mit gedrucktem Montageblatt oder Sicherung vergleichen.`,
  'build-spec-lost': (_) =>
    'Das Datenblatt dieses Aufbaus fehlt in der Aufzeichnung, Zeichnen nicht möglich. Eine Sicherung einsetzen.',
  'file-not-ours': (_) =>
    'Bedplate kann diese Datei nicht öffnen; sie blieb unverändert. Exportierten Aufbau (.bedplate), Datenblatt einer Bibliothek (.bedplate-spec) oder Motordatenblatt (.json) wählen.',
  'file-unreadable': (_) =>
    'Datei nicht lesbar. Ist sie noch da, und darf dieser Benutzer sie lesen? Dann erneut öffnen.',
  'import-too-large': ({ most }) =>
    `Die Datei ist größer als jeder exportierte Aufbau (höchstens ${most} MB). Nichts importiert. Die exportierte Datei wählen.`,
  'import-not-ours': (_) =>
    'Die Datei ist kein exportierter Aufbau. Nichts importiert. Eine Datei mit der Endung .bedplate wählen.',
  'import-newer': (_) =>
    'Die Datei wurde von einem neueren Bedplate exportiert. Nichts importiert. Mit dessen Version importieren.',
  'import-altered': ({ line }) =>
    `Die Datei ist nicht wie exportiert: In Zeile ${line} wurde etwas geändert, ergänzt oder abgeschnitten. Nichts importiert. Neu exportieren und als Datei übertragen.`,
  'import-spec-faulty': ({ fault }) =>
    `Das Datenblatt in der Datei hat einen Fehler, nichts importiert: ${fault}`,
  'import-senseless': (_) =>
    'Die Einträge der Datei ergeben keinen Aufbau ihres Motors, nichts importiert. Bei der Person nachfragen, von der die Datei stammt.',
  'build-name-missing': (_) => 'Der Aufbau hat keinen Namen. Einen eintippen, z. B. Kunde und Pumpe.',
  'person-not-proven': ({ name }) =>
    `${name} hat eine PIN, sie fehlt noch. ${name} wählen und PIN eintippen.`,
  'practice-not-kept': ({ name }) =>
    `${name} steht nicht in der Personenliste, diese Runde wird nicht aufgehoben. Zum Aufheben den Namen in die Personenliste aufnehmen.`,
  'practice-only': (_) =>
    'Dies ist ein Probelauf: nirgends aufgezeichnet, also nichts zu exportieren, zu überprüfen oder aufzuheben. Für einen Nachweis einen Aufbau beginnen.',
  'practice-led-by-mechanic': (_) =>
    'Übungen aufgeben und den Stand der anderen sehen darf ein Mechaniker der Personenliste; haben Mechaniker eine PIN, einer von ' +
    'ihnen. Einen solchen als Person an der Werkbank wählen.',
  'person-unknown': (_) => 'Diese Person steht nicht mehr in der Liste. Liste neu ansehen.',
  'person-twice': ({ name }) =>
    `${name} steht schon in der Liste. Der anderen Person einen unterscheidbaren Namen geben.`,
  'people-guarded': (_) =>
    'Die Personenliste ist mit PIN geschützt. Ein Mechaniker mit PIN wählt seinen Namen und tippt sie ein.',
  'badge-unknown': (_) =>
    'Niemand in der Liste hat diesen Ausweis. Namen wählen oder den Ausweis jemandem zuordnen.',
  'badge-twice': ({ name }) =>
    `Dieser Ausweis gehört schon ${name}. Dort zuerst entfernen oder einen anderen verwenden.`,
  'pin-too-short': ({ fewest }) => `PIN zu kurz. Mindestens ${fewest} Ziffern oder Buchstaben.`,
  'pin-wrong': ({ name }) => `Falsche PIN für ${name}. Neu eintippen.`,
  'pin-wanted': ({ name }) => `${name} hat eine PIN. Eintippen.`,
  'pin-wait': ({ seconds }) => `Zu viele falsche PINs. ${seconds} s warten, dann neu eintippen.`,
  'second-is-first': ({ name }) =>
    `Das ist die eigene Arbeit von ${name}; niemand prüft die eigene Arbeit. Andere Person rufen.`,
  'second-not-known': ({ name }) =>
    `${name} steht nicht als Mechaniker in der Personenliste, die Prüfung würde nicht zählen. Einen eingetragenen Mechaniker rufen.`,
  'person-missing': (_) => 'Niemand genannt. Name der Person an der Werkbank eintippen.',
  'text-too-long': ({ what, most }) => `${things[what]}: zu lang. Höchstens ${most} Zeichen.`,

  'engine-unknown': ({ engine }) =>
    `Einen Motor „${engine}“ gibt es hier nicht. Einen aus der Liste der Motoren wählen.`,
  'engine-faulty': ({ engine }) =>
    `Das Datenblatt von „${engine}“ hat Fehler; bis zur Berichtigung kein Aufbau danach. Sie stehen daneben.`,
  'engine-named-twice': ({ engine, file }) =>
    `„${engine}“ ist schon Kennung eines anderen Datenblatts. Dem in ${file} eine eigene geben.`,
}
