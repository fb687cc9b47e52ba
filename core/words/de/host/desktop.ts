import type { Words } from '../../words.ts'

export const desktop: Words['desktop'] = {
  menus: { file: 'Datei', edit: 'Bearbeiten', view: 'Ansicht' },

  pageFaults: {
    gone: 'Die Seite im Fenster ist beendet.',
    hung: 'Die Seite im Fenster antwortet nicht mehr.',
    'not-loaded': 'Die Seite im Fenster konnte nicht geladen werden.',
    'no-bridge': 'Die Seite im Fenster konnte nicht mit dem Programm verbunden werden.',
    'no-graphics': 'Der Programmteil für die Bildschirmausgabe ist beendet.',
  },
  pageFaultAgain: ({ fault }) => `${fault} Einmal neu geladen, ohne Erfolg.`,
  confirmedIsKept: 'Bestätigtes ist gesichert.',
  inBrowser: ({ address }) =>
    `Solange diese Meldung offen ist, kann in einem Browser auf diesem Rechner weitergearbeitet werden: ${address}`,
  addressCopied: 'Adresse kopiert: in einen Browser einfügen.',
  loadAgain: 'Seite neu laden',
  copyAddress: 'Adresse kopieren',
  end: 'Bedplate beenden',

  serial: {
    which: 'An welcher Schnittstelle hängt das Messgerät?',
    none: 'Keine serielle Schnittstelle vorhanden. Messgerät einstecken, dann erneut verbinden.',
    others: 'Weitere …',
    cancel: 'Abbrechen',
  },

  saving: {
    isThere: ({ name }) => `${name} ist schon vorhanden. Ersetzen?`,
    otherName: 'Anderen Namen wählen',
    replace: 'Ersetzen',
    pdf: 'PDF',
    table: 'Tabelle (CSV)',
    drawing: 'Zeichnung (SVG)',
    spec: 'Motordatenblatt',
    exported: 'Exportierter Aufbau',
    nameless: 'Montageblatt',
    notDevice: ({ name }) => `Datei ${name}`,
  },
}
