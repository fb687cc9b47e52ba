import type { revisionWords as pattern } from '../../en/problems/revision.ts'
import type { Table } from '../../table.ts'

export const revisionWords: Table<typeof pattern> = {
  'revision-none': () =>
    'Die Bibliothek hat keine neuere Revision des Datenblatts, nach dem dieser Aufbau geht. Aufbau neu öffnen und nachsehen.',
  'revision-of-another': ({ engine }) =>
    `Dieses Datenblatt gehört zu einem anderen Motor, „${engine}“. Ein Aufbau behält seinen Motor. Für den anderen einen neuen Aufbau anfangen.`,
  'revision-same': () => 'Der Aufbau geht schon nach dieser Revision. Damit weiterarbeiten.',
  'revision-step-begun': ({ step }) =>
    `„${step}“ ist halb fertig und wird nach der Revision beendet, nach der der Schritt begonnen wurde. Beenden oder rückgängig machen, dann die Revision übernehmen.`,
  'revision-opens-others': ({ others }) =>
    others.length === 0
      ? 'Durch die neuere Revision wird kein Schritt mehr wieder offen. Noch einmal ansehen, dann bestätigen.'
      : `Durch die neuere Revision werden ${others.map((other) => `„${other}“`).join(', ')} wieder offen. Die Liste noch einmal ansehen, dann bestätigen.`,
  'revision-not-taken-apart': ({ first }) =>
    `Vor dem Übernehmen an der Werkbank rückgängig machen, was die Liste nennt, „${first}“ zuerst, und dies angeben.`,
}
