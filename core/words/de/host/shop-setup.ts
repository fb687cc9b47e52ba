import type { Words } from '../../words.ts'
import { counted, fixed, plain } from '../formats.ts'

export const shopSetup: Words['shopSetup'] = {
  usage: `npm run shop -- BEFEHL ADRESSE   das gemeinsame Archiv der Werkbänke einer Werkstatt in PostgreSQL einrichten

  init      Rollen, Schema und Tabellen anlegen und ausgeben, was jede Werkbank braucht; nochmals mit größerer
            Zahl aufgerufen, kommen die fehlenden Zugänge hinzu
              --benches N   Zahl der Werkbänke mit Zugang (1)
  migrate   Tabellen auf die Version dieses Programms bringen
  status    sagen, was darin ist und wie viel Platz es belegt
  lists     sagen, ob Personen und Drehmomentschlüssel eine Liste für alle Werkbänke sind oder jede ihre eigene
            hat; dies festlegen
              --people one|own    --wrenches one|own    (one: eine für alle, own: je Werkbank)
  rebuild   Liste der Aufbauten und die Wörter, unter denen sie gefunden werden, aus den Einträgen neu erstellen;
            die Werkbänke arbeiten währenddessen weiter

Die Adresse ist die des Eigentümers, wie postgres://owner@server/database, mit ?shop=NAME, wo eine Datenbank mehrere
Werkstätten hat, und ?sslrootcert=DATEI für die Zertifizierungsstelle des Servers. Das Passwort darf in PGPASSWORD stehen.`,
  ready: ({ shop, database, roles }) =>
    [
      `Das Archiv der Werkstatt „${shop}“ ist in der Datenbank „${database}“ bereit.`,
      ...(roles.length === 0
        ? [
            'Alle Zugänge sind schon da. Ihre Passwörter bewahrt niemand auf: für neue zuerst die Rolle entfernen (DROP ROLE).',
          ]
        : [
            'Diese Passwörter werden einmal ausgegeben und nirgends aufbewahrt. Jede Werkbank erhält ihr eigenes:',
          ]),
      ...roles.map(
        ({ kind, address, password }) =>
          `\n  ${kind === 'bench' ? 'Eine Werkbank' : 'Nur zum Lesen'}\n    Adresse   ${address}\n    Passwort  ${password}`,
      ),
    ].join('\n'),
  lists: ({ shop, people, wrenches }) =>
    [
      `In der Werkstatt „${shop}“`,
      people
        ? '  sind die Personen eine Liste für alle Werkbänke'
        : '  hat jede Werkbank ihre eigene Liste der Personen',
      wrenches
        ? '  sind die Drehmomentschlüssel eine Liste für alle Werkbänke'
        : '  hat jede Werkbank ihre eigene Liste der Drehmomentschlüssel',
    ].join('\n'),
  rebuilt: ({ shop, builds, changed, unread }) =>
    [
      `Die Liste der Werkstatt „${shop}“ wurde aus den Einträgen von ${counted(builds, 'Aufbau', 'Aufbauten')} neu erstellt.`,
      changed === 0
        ? '  sie war, wie es die Einträge sagen'
        : `  ${counted(changed, 'Aufbau', 'Aufbauten')} anders aufgeführt, als es die Einträge sagen, und berichtigt`,
      ...(unread === 0
        ? []
        : [
            `  ${counted(unread, 'Aufbau', 'Aufbauten')} unverändert: dieses Programm kann Einträge oder Datenblatt nicht lesen`,
          ]),
    ].join('\n'),
  migrated: ({ shop, from, to }) =>
    from === to
      ? `Die Tabellen der Werkstatt „${shop}“ haben schon Version ${to}.`
      : `Die Tabellen der Werkstatt „${shop}“ wurden von Version ${from} auf ${to} gebracht.`,
  status: ({ shop, server, version, builds, entries, photos, forks, benches, tables }) => {
    const bytes = tables.reduce((sum, table) => sum + table.bytes, 0)
    return [
      `Werkstatt „${shop}“ auf PostgreSQL ${server}, Tabellen der Version ${version}`,
      `  ${counted(builds, 'Aufbau', 'Aufbauten')}, ${counted(entries, 'Eintrag', 'Einträge')}, ${counted(photos, 'Foto', 'Fotos')}`,
      forks === 0
        ? '  keine Verzweigung offen'
        : `  ${counted(forks, 'Aufbau', 'Aufbauten')} mit offener Verzweigung`,
      `  insgesamt ${fixed(bytes / 1e6, 1, 'MB')}${builds === 0 ? '' : `, ${plain(Math.round(bytes / builds))} Byte je Aufbau`}`,
      ...tables.map(({ table, bytes: its }) => `    ${table}: ${fixed(its / 1e6, 2, 'MB')}`),
      ...benches.map(
        ({ name, program, seenAtUtc }) => `  ${name}: zuletzt gesehen ${seenAtUtc}, Bedplate ${program}`,
      ),
    ].join('\n')
  },
}
