const usage = `npm start                       abrir Bedplate
npm start -- ARCHIVO            abrirlo con un montaje exportado (.bedplate) o con una ficha
npm start -- --local            en una ventana del navegador, aunque esté Electron
npm start -- --no-window        no abrir nada: mostrar la dirección y servir hasta que se termine
npm start -- --data CARPETA     guardar los montajes en CARPETA
npm start -- --specs CARPETA    tomar las fichas de motor de CARPETA
npm start -- --language es      español desde ahora; en es inglés, de es alemán
npm start -- --shop DIRECCIÓN   unirse al taller cuyo archivo está en postgres://…
npm start -- --bench NOMBRE     llamar así a este banco en el taller
npm start -- --fetch-electron   intentar otra vez descargar Electron
npm start -- --doctor           decir cómo están el programa y su registro, sin abrir nada
npm start -- --help             mostrar esto`

/** @type {import('./en.mjs').LauncherWords} */
export const es = {
  usage,
  optionUnknown: ({ option }) => `«${option}» no es una opción de Bedplate. Son estas:\n${usage}`,
  optionAlone: ({ option, value }) => `${option} no lleva nada detrás: quitar «=${value}».`,
  languageUnknown: ({ language }) =>
    `${language === '' ? 'Detrás de --language va un idioma' : `Bedplate no habla «${language}»`}: escribir es para español, en para inglés (English) o de para alemán (Deutsch).`,
  shopMissing:
    'Detrás de --shop va la dirección del archivo del taller, por ejemplo --shop postgres://bench@server/bedplate.',
  benchMissing: 'Detrás de --bench va el nombre del banco, por ejemplo --bench "Banco 2".',
  folderMissing: ({ option }) => `Detrás de ${option} va una carpeta, por ejemplo ${option} ./banco-2.`,

  nodeTooOld: ({ least, version }) =>
    `Bedplate necesita aquí Node ${least} o más nuevo, y este es Node ${version}. Instalar uno actual (nodejs.org) y volver a iniciar.`,
  noNode: ({ version, least }) =>
    `El Node que viene con los paquetes no funciona aquí, y este (${version}) es anterior a ${least}. Instalar uno actual (nodejs.org) y volver a iniciar.`,
  nodeNotStarted: ({ message }) => `Node no se ha iniciado: ${message}`,

  installing: 'Instalando los paquetes que Bedplate necesita (solo la primera vez) …',
  stillInstalling: ({ seconds }) => `  … ${seconds} s`,
  installed: ({ seconds }) => `Instalado en ${seconds} s.`,
  installingFailed: 'La instalación ha fallado. ¿Hay red? No hace falta nada más para volver a intentarlo.',
  npmNotStarted: ({ message }) => `npm no se ha iniciado: ${message}`,
}
