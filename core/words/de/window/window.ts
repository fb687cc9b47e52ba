import type { Words } from '../../words.ts'

export const window: Words['window'] = {
  skip: 'Zum Inhalt der Seite',
  help: 'Hilfe',
  openingRecord: 'Aufzeichnung wird geöffnet …',
  pageNotLoaded:
    'Diese Seite konnte nicht geladen werden. Prüfen, ob Bedplate noch läuft, dann das Fenster neu laden.',
}
