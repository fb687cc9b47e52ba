import type { revisionWords as pattern } from '../../en/problems/revision.ts'
import type { Table } from '../../table.ts'

export const revisionWords: Table<typeof pattern> = {
  'revision-none': () =>
    'Die Bibliothek hat keinen neueren Stand des Datenblatts, nach dem dieser Aufbau geht. Aufbau neu öffnen und nachsehen.',
  'revision-of-another': ({ engine }) =>
    `Dieses Datenblatt gehört zu einem anderen Motor, „${engine}“. Ein Aufbau behält seinen Motor. Für den anderen einen neuen Aufbau anfangen.`,
  'revision-same': () => 'Der Aufbau geht schon nach diesem Stand. Damit weiterarbeiten.',
  'revision-step-begun': ({ step }) =>
    `„${step}“ ist halb fertig und wird nach dem Stand beendet, nach dem der Schritt begonnen wurde. Beenden oder rückgängig machen, dann den Stand übernehmen.`,
  'revision-opens-others': ({ others }) =>
    others.length === 0
      ? 'Durch den neueren Stand wird kein Schritt mehr wieder offen. Noch einmal ansehen, dann bestätigen.'
      : `Durch den neueren Stand werden ${others.map((other) => `„${other}“`).join(', ')} wieder offen. Die Liste noch einmal ansehen, dann bestätigen.`,
  'revision-not-taken-apart': ({ first }) =>
    `Vor dem Übernehmen an der Werkbank rückgängig machen, was die Liste nennt, „${first}“ zuerst, und dies angeben.`,
}
