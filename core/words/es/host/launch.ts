import type { Words } from '../../words.ts'

const targets = { renderer: 'la ventana', local: 'el host local', desktop: 'el host de escritorio' }

export const launch: Words['launch'] = {
  inDesktopHost: 'Bedplate funciona en el host de escritorio.',
  inLocalHost: ({ why }) => `Bedplate funciona en el host local: ${why}.`,
  at: ({ address }) => `Bedplate está en ${address}`,
  shopJoined: ({ address }) => `Unido al taller en ${address}.`,
  shopNotJoined: ({ why }) =>
    `No se ha unido al taller: ${why} El banco sigue trabajando solo; la página «Taller» admite otra dirección.`,
  shopSilent: ({ address, why }) =>
    `El taller en ${address} no responde a este banco: ${why} El banco sigue trabajando solo; lo confirmado se envía cuando se corrija.`,
  openYourself: ({ why }) => `Abrir a mano la dirección de abajo en un navegador: ${why}.`,
  specsNoFolder: ({ folder }) =>
    `--specs indica ${folder}, que no es una carpeta. Indicar la que contiene las fichas de motores.`,
  noFile: ({ file }) =>
    `${file} no es un fichero. Se puede abrir un montaje exportado (.bedplate) o una ficha de motor (.json).`,
  building: ({ target }) => `Compilando ${targets[target]} (sus fuentes son nuevas) …`,
  buildingFailed: 'La compilación ha fallado; las líneas de arriba dicen dónde.',
  windowNotBuilt: 'La ventana aún no está compilada. Arrancar con `npm start`.',

  fetching: {
    begins: 'Descargando Electron, unos 110 MB, para tener ventana propia …',
    arrived: ({ megabytes, of }) => `  … ${megabytes} MB${of === null ? '' : ` de ${of} MB`}`,
  },
}
