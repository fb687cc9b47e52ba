const usage = `npm start                       Bedplate öffnen
npm start -- DATEI              mit einem exportierten Aufbau (.bedplate) oder einem Datenblatt öffnen
npm start -- --local            in einem Browserfenster, auch wenn Electron vorhanden ist
npm start -- --no-window        nichts öffnen: die Adresse ausgeben und bedienen, bis beendet wird
npm start -- --data ORDNER      Aufbauten in ORDNER ablegen
npm start -- --specs ORDNER     die Datenblätter der Motoren aus ORDNER nehmen
npm start -- --language de      von jetzt an Deutsch; en ist Englisch, es ist Spanisch
npm start -- --shop ADRESSE     der Werkstatt beitreten, deren Archiv unter postgres://… liegt
npm start -- --bench NAME       die Werkbank in der Werkstatt so nennen
npm start -- --fetch-electron   Electron noch einmal herunterladen
npm start -- --doctor           sagen, wie es um Programm und Aufzeichnung steht, und nichts öffnen
npm start -- --help             dies ausgeben`

/** @type {import('./en.mjs').LauncherWords} */
export const de = {
  usage,
  optionUnknown: ({ option }) => `„${option}“ ist keine Option von Bedplate. Es gibt diese:\n${usage}`,
  optionAlone: ({ option, value }) => `Nach ${option} folgt nichts: „=${value}“ weglassen.`,
  languageUnknown: ({ language }) =>
    `${language === '' ? 'Nach --language folgt eine Sprache' : `„${language}“ spricht Bedplate nicht`}: de für Deutsch schreiben, en für Englisch (English) oder es für Spanisch (Español).`,
  shopMissing:
    'Nach --shop folgt die Adresse des Werkstattarchivs, zum Beispiel --shop postgres://bench@server/bedplate.',
  benchMissing: 'Nach --bench folgt der Name der Werkbank, zum Beispiel --bench "Bank 2".',
  folderMissing: ({ option }) => `Nach ${option} folgt ein Ordner, zum Beispiel ${option} ./bank-2.`,

  nodeTooOld: ({ least, version }) =>
    `Bedplate braucht hier Node ${least} oder neuer, und dies ist Node ${version}. Ein aktuelles installieren (nodejs.org) und neu starten.`,
  noNode: ({ version, least }) =>
    `Das mitgelieferte Node läuft hier nicht, und dieses (${version}) ist älter als ${least}. Ein aktuelles installieren (nodejs.org) und neu starten.`,
  nodeNotStarted: ({ message }) => `Node ist nicht gestartet: ${message}`,

  installing: 'Die Pakete, die Bedplate braucht, werden installiert (nur beim ersten Start) …',
  stillInstalling: ({ seconds }) => `  … ${seconds} s`,
  installed: ({ seconds }) => `Nach ${seconds} s installiert.`,
  installingFailed:
    'Das Installieren ist fehlgeschlagen. Ist das Netz da? Mehr braucht ein neuer Versuch nicht.',
  npmNotStarted: ({ message }) => `npm ist nicht gestartet: ${message}`,
}
