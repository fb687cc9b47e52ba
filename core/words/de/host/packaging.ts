import type { Words } from '../../words.ts'
import { and, fixed } from '../formats.ts'

const tools = {
  linux: 'fpm und die Laufzeit von AppImage',
  win: 'NSIS',
  mac: 'die Werkzeuge für Disk-Images',
}

export const packaging: Words['packaging'] = {
  copyright: 'Copyright © 2026 The Bedplate developers',
  camera: 'Bedplate nimmt Fotos eines Aufbaus auf, wenn die Taste dafür gedrückt wird.',
  synopsis: 'Führt, prüft und dokumentiert die Montage von Kurbeltrieb und Motorblock',
  fileKind: 'Bedplate-Aufbau',
  fileDescription: 'Aufbau eines Motors mit seiner Aufzeichnung',
  specKind: 'Bedplate-Datenblatt',
  specDescription: 'Datenblatt eines Motors aus einer Bibliothek',
  worksOfOthers: `Bedplate enthält die folgenden Werke anderer. Die Lizenzen von Electron und Chromium liegen neben dem Programm,
in LICENSE.electron.txt und LICENSES.chromium.html.`,
  inWindow: 'Im Fenster:',
  noLicenceText: 'Sein Paket enthält keinen Text davon.',

  building: ({ targets }) => `Wird gebaut: ${and(targets)} …`,
  noPublisher: ({ missing }) =>
    `Die Pakete nennen keinen Herausgeber: vor der Veröffentlichung ${and(missing)} setzen.`,
  size: ({ files, megabytes }) =>
    `Das Paket enthält ${files} Dateien, ${fixed(megabytes, 1, 'MB')}, neben Electron.`,
  done: ({ folder }) => `Die Pakete liegen in ${folder}.`,
  failed: (facts) =>
    `Kein Paket erzeugt. Herunterzuladen sind: electron-builder ${facts.builder} aus der npm-Registry; Electron von
github.com (oder ELECTRON_MIRROR oder schon geholt mit \`npm start -- --fetch-electron\`); und ${tools[facts.platform]} von
github.com/electron-userland (oder ELECTRON_BUILDER_BINARIES_MIRROR). Alles ist vorbereitet: die Zeile oben dort ausführen, wo das erreichbar ist.`,
}
