import type { Words } from '../../words.ts'

const targets = { renderer: 'Fenster', local: 'lokaler Host', desktop: 'Desktop-Host' }

export const launch: Words['launch'] = {
  inDesktopHost: 'Bedplate läuft im Desktop-Host.',
  inLocalHost: ({ why }) => `Bedplate läuft im lokalen Host: ${why}.`,
  at: ({ address }) => `Bedplate ist unter ${address}`,
  shopJoined: ({ address }) => `Der Werkstatt unter ${address} beigetreten.`,
  shopNotJoined: ({ why }) =>
    `Der Werkstatt wurde nicht beigetreten: ${why} Die Werkbank arbeitet allein weiter; die Seite „Werkstatt“ nimmt eine andere Adresse.`,
  shopSilent: ({ address, why }) =>
    `Die Werkstatt unter ${address} antwortet dieser Werkbank nicht: ${why} Die Werkbank arbeitet allein weiter; was bestätigt wird, geht hin, sobald dies behoben ist.`,
  openYourself: ({ why }) => `Die folgende Adresse selbst in einem Browser öffnen: ${why}.`,
  specsNoFolder: ({ folder }) =>
    `--specs nennt ${folder}, das ist kein Ordner. Den Ordner der Motordatenblätter nennen.`,
  noFile: ({ file }) =>
    `${file} ist keine Datei. Zu öffnen sind exportierte Aufbauten (.bedplate) und Motordatenblätter (.json).`,
  building: ({ target }) => `Wird gebaut (Quellen sind neuer): ${targets[target]} …`,
  buildingFailed: 'Bauen fehlgeschlagen; wo, steht in den Zeilen darüber.',
  windowNotBuilt: 'Das Fenster ist noch nicht gebaut. Mit `npm start` starten.',

  fetching: {
    begins: 'Electron wird geholt, etwa 110 MB, für ein eigenes Fenster …',
    arrived: ({ megabytes, of }) => `  … ${megabytes} MB${of === null ? '' : ` von ${of} MB`}`,
  },
}
