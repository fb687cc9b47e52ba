import type { shopWords as pattern } from '../../en/problems/shop.ts'
import type { Table } from '../../table.ts'

const addressFaults = {
  unreadable: 'das ist keine Adresse',
  scheme: 'sie beginnt nicht mit postgres://',
  host: 'kein Server genannt',
  user: 'kein Benutzer genannt, wie „bench“ in postgres://bench@server/database',
  database: 'am Ende keine Datenbank genannt',
  shop: 'der Name der Werkstatt darf nur Kleinbuchstaben, Ziffern und _ haben und beginnt mit einem Buchstaben',
}

const certificateFaults = {
  untrusted: 'stammt von keiner hier bekannten Zertifizierungsstelle',
  'other-name': 'ist auf einen anderen Namen ausgestellt',
  expired: 'ist abgelaufen oder noch nicht gültig',
}

const passwordFileFaults = {
  open: 'ist für andere Benutzer lesbar. Deren Rechte entziehen (chmod 600) und der Rolle ein neues Passwort geben',
  unreadable: 'ist nicht lesbar. Nur diesem Benutzer das Leserecht geben',
}

export const shopWords: Table<typeof pattern> = {
  'shop-address-wrong': ({ fault }) =>
    `Adresse des Werkstattarchivs unbrauchbar: ${addressFaults[fault]}. So eingeben, wie sie beim Einrichten ausgegeben wurde.`,
  'shop-host-unknown': ({ host }) =>
    `Kein Server namens ${host} bekannt. Schreibweise prüfen; ist das Netz verbunden?`,
  'shop-unreachable': ({ host, code }) =>
    `Das Werkstattarchiv auf ${host} antwortet nicht (${code}). Hier Bestätigtes ist gesichert und wird gesendet, sobald es wieder antwortet. Ist der Server eingeschaltet und das Netz verbunden?`,
  'shop-password-missing': ({ user }) =>
    `Das Archiv verlangt ein Passwort für ${user}, hier liegt keines. Auf der Seite „Werkstatt“ eintippen oder in PGPASSWORD angeben.`,
  'shop-password-wrong': ({ user, host }) =>
    `Das Archiv auf ${host} nimmt das Passwort von ${user} nicht an oder kennt den Benutzer nicht. Passwort so eintippen, wie es beim Einrichten ausgegeben wurde.`,
  'shop-not-let-in': ({ user, host }) =>
    `Der Server ${host} lässt ${user} von diesem Rechner aus nicht ein. Dafür dort eine Zeile in pg_hba.conf eintragen lassen.`,
  'shop-tls-missing': ({ host }) =>
    `Der Server ${host} verschlüsselt nicht; nichts gesendet, auch kein Passwort. Dort TLS einschalten lassen.`,
  'shop-certificate': ({ host, fault }) =>
    `Das Zertifikat des Servers ${host} ${certificateFaults[fault]}; nichts gesendet, auch kein Passwort. Datei der ausstellenden Zertifizierungsstelle angeben oder das Zertifikat in Ordnung bringen lassen.`,
  'shop-authority-unreadable': ({ file }) =>
    `Die Datei der Zertifizierungsstelle, ${file}, ist nicht lesbar oder enthält kein Zertifikat in PEM. Datei neu wählen.`,
  'shop-password-file': ({ file, fault }) =>
    `Die Datei mit dem Passwort des Archivs, ${file}, ${passwordFileFaults[fault]}.`,
  'shop-server-old': ({ host, version, least }) =>
    `Der Server ${host} ist PostgreSQL ${version}; das Archiv braucht mindestens ${least}. Einen neueren installieren lassen.`,
  'shop-database-missing': ({ database }) =>
    `Der Server hat keine Datenbank ${database}. Schreibweise prüfen oder sie anlegen lassen.`,
  'shop-database-foreign': ({ database, shop }) =>
    `In der Datenbank ${database} gehört das Schema ${shop} einem anderen Programm und blieb unverändert. Das Archiv unter einem anderen Namen einrichten.`,
  'shop-name-taken': ({ shop }) =>
    `Eine andere Datenbank dieses Servers hat schon eine Werkstatt ${shop}; deren Rollen kämen auch hier hinein. Unter einem anderen Namen einrichten: ?shop=NAME an die Adresse anhängen.`,
  'shop-not-set-up': ({ database, shop }) =>
    `Die Datenbank ${database} hat kein Archiv der Werkstatt ${shop}, oder dieser Benutzer darf es nicht sehen. Vom Eigentümer einrichten lassen mit: npm run shop -- init`,
  'shop-schema-newer': ({ shop, version, known }) =>
    `Das Archiv von ${shop} stammt von einem neueren Bedplate (Tabellenversion ${version}; hier bekannt ${known}). Nichts geändert. Hier Bestätigtes wartet, bis dieses Programm das neuere ist.`,
  'shop-schema-older': ({ shop, version, known }) =>
    `Das Archiv von ${shop} hat Tabellenversion ${version}, dieses Programm braucht ${known}. Vom Eigentümer ausführen lassen: npm run shop -- migrate`,
  'shop-not-allowed': ({ user }) =>
    `Das Archiv erlaubt ${user} das nicht. Die Rolle eines Lesers sendet nichts; eingerichtet wird ein Archiv nur mit der Rolle des Eigentümers.`,
  'shop-full': ({ host }) =>
    `Der Datenträger des Archivs auf ${host} ist voll. Hier Bestätigtes ist gesichert und wird gesendet, sobald Platz ist. Auf dem Server Platz schaffen lassen.`,
  'shop-crowded': ({ host }) =>
    `Der Server ${host} hat keine Verbindung mehr für diese Werkbank frei; es wird erneut versucht. Bleibt es so, dort max_connections erhöhen lassen.`,
  'shop-server-fault': ({ host, code }) =>
    `Das Archiv auf ${host} konnte das nicht und behielt nichts davon (SQLSTATE ${code}); es wird erneut versucht. Bleibt es so, das Protokoll des Servers ansehen lassen.`,
  'shop-answer-unreadable': ({ host }) =>
    `Die Antwort des Archivs auf ${host} ist nicht lesbar; nichts davon wurde übernommen. Hier Bestätigtes bleibt erhalten. Ist es die Adresse des Archivs und nicht die eines anderen Servers? Wenn ja, den Eigentümer nachsehen lassen.`,
  'shop-build-altered': ({ name, entry }) =>
    `Was das Archiv von ${name} hat, ist nicht wie bestätigt: Eintrag ${entry} wurde verändert oder folgt nicht auf den davor. Nichts davon wurde übernommen. Den Eigentümer des Archivs nachsehen lassen und den Aufbau an der Werkbank überprüfen, die ihn aufgezeichnet hat.`,
  'shop-spec-missing': () =>
    'Das Datenblatt dieses Aufbaus ist noch nicht im Archiv, daher keine Einträge angenommen. Zuerst wird das Datenblatt gesendet.',
  'shop-entry-refused': ({ entry }) =>
    `Eintrag ${entry} vom Archiv nicht angenommen: Er folgt nicht auf den Eintrag davor oder ist nicht wie bestätigt. Die Aufzeichnung hier überprüfen.`,
  'shop-fork-unknown': () =>
    'Diese Verzweigung gibt es im Archiv nicht, oder sie ist entschieden. Liste neu ansehen.',
}
