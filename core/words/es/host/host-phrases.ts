import type { hostPhrases as english, OfNamed } from '../../en/host/host-phrases.ts'

/** How a program ended, where it is not known by what it said. */
const ended = (code: number | null) => (code === null ? 'una señal' : String(code))

const names = ({ named }: OfNamed) => `BEDPLATE_ELECTRON indica ${named}`

export const hostPhrases: typeof english = {
  electronThere: () => 'Electron está instalado',
  electronToCome: () => 'Electron aún no está; el próximo arranque intenta descargarlo',
  hostByItself: () => 'se arrancó por separado',
  noWindowAsked: () => 'no se pidió ninguna ventana',
  localAsked: () => 'se pidió con --local',
  windowAsRoot: () => 'como root, una ventana tendría que funcionar sin su espacio aislado (sandbox)',
  noDisplay: () => 'no hay pantalla',
  electronNotFetched: ({ why }) =>
    `no se pudo descargar Electron (${why}); \`npm start -- --fetch-electron\` lo intenta de nuevo`,
  noWindowInTime: ({ seconds }) => `el host de escritorio no mostró ninguna ventana en ${seconds} s`,
  electronNotStarted: ({ message }) => `Electron no arrancó: ${message}`,
  electronEnded: ({ code }) => `Electron terminó con ${ended(code)} antes de que se viera su ventana`,
  desktopGaveUp: ({ why }) => why.replace(/\.$/, ''),
  noNamespaces: () =>
    'este sistema no permite a un usuario normal crear los espacios de nombres del sandbox de una ventana',
  appArmor: ({ profile, place }) =>
    `AppArmor impide a Electron crear su sandbox. Para permitirlo, escribir
  sudo install -m 644 "${profile}" ${place} && sudo apparmor_parser --replace ${place}
y arrancar de nuevo`,

  // Why what `BEDPLATE_ELECTRON` names cannot be used
  electronNamedNowhere: (of) => `${names(of)}, donde no hay nada`,
  electronNamedNoProgram: (of) => `${names(of)}, que no es un programa`,
  electronNamedOther: (of) => `${names(of)}, que no es Electron: a su lado no hay ningún fichero «version»`,
  electronNamedVersion: ({ version, wanted, ...of }) =>
    `${names(of)}, que es Electron ${version}, y Bedplate necesita ${wanted}`,

  // Why Electron could not be fetched
  nothingArrived: ({ seconds }) => `no llegó nada en ${seconds} s`,
  serverAnswered: ({ host, status }) => `${host} respondió ${status}`,
  serverNotReached: ({ host, cause }) => `no se puede acceder a ${host}: ${cause}`,
  installerPrinted: ({ line }) => line,
  installerLeftNothing: ({ code }) => `su instalador terminó con ${ended(code)} y no dejó ningún programa`,

  // Why no browser window was opened
  browserAsRoot: () => 'como root, un navegador tendría que funcionar sin su sandbox',
  noBrowser: () => 'no se encontró ningún Chromium, Chrome o Edge que pueda mostrar una ventana',
  browserNotStarted: ({ browser, message }) => `${browser} no arrancó: ${message}`,
  browserEnded: ({ browser, code }) => `${browser} terminó enseguida (${ended(code)})`,
}
