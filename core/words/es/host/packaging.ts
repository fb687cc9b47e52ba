import type { Words } from '../../words.ts'
import { fixed, listed } from '../formats.ts'

export const packaging: Words['packaging'] = {
  // In the packages
  copyright: 'Copyright © 2026 The Bedplate developers',
  camera: 'Bedplate hace fotos de un montaje cuando se pulsa para ello.',
  synopsis: 'Guía, comprueba y registra el montaje de la parte baja de un motor',
  fileKind: 'Montaje de Bedplate',
  fileDescription: 'Un montaje de un motor con su registro',
  specKind: 'Ficha de Bedplate',
  specDescription: 'La ficha de un motor, de una biblioteca',
  worksOfOthers: `Bedplate contiene las siguientes obras de terceros. Las licencias de Electron y Chromium están junto al programa,
en LICENSE.electron.txt y LICENSES.chromium.html.`,
  inWindow: 'En la ventana:',
  noLicenceText: 'Su paquete no contiene el texto.',

  // On the terminal
  building: ({ targets }) => `Compilando ${listed(targets)} …`,
  noPublisher: ({ missing }) =>
    `Los paquetes no indican quién los publica: definir ${listed(missing)} antes de publicarlos.`,
  size: ({ files, megabytes }) =>
    `El paquete contiene ${files} ficheros, ${fixed(megabytes, 1, 'MB')}, además de Electron.`,
  done: ({ folder }) => `Los paquetes están en ${folder}.`,
  failed: ({ builder, platform }) =>
    `No se ha hecho ningún paquete. Requiere descargar: electron-builder ${builder} del registro de npm; Electron de
github.com (o ELECTRON_MIRROR, o lo que ya descargó \`npm start -- --fetch-electron\`); y ${tools[platform]} de
github.com/electron-userland (o ELECTRON_BUILDER_BINARIES_MIRROR). Todo está listo: ejecutar la línea de arriba donde se puedan obtener.`,
}

/** What electron-builder fetches beside Electron. */
const tools = {
  linux: 'fpm y el entorno de AppImage',
  win: 'NSIS',
  mac: 'las herramientas de imágenes de disco',
}
