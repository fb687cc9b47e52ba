import type { hostPhrases as pattern } from '../../en/host/host-phrases.ts'
import type { Table } from '../../table.ts'

const ended = (code: number | null) => (code === null ? 'durch ein Signal' : `mit ${code}`)

export const hostPhrases: Table<typeof pattern> = {
  electronThere: (_) => 'Electron ist vorhanden',
  electronToCome: (_) => 'Electron fehlt noch; der nächste Start versucht, es zu holen',
  hostByItself: (_) => 'er wurde allein gestartet',
  noWindowAsked: (_) => 'es war kein Fenster verlangt',
  localAsked: (_) => 'mit --local verlangt',
  windowAsRoot: (_) => 'als root müsste ein Fenster ohne Sandbox laufen',
  noDisplay: (_) => 'keine Anzeige vorhanden',
  electronNotFetched: ({ why }) =>
    `Electron konnte nicht geholt werden (${why}); \`npm start -- --fetch-electron\` versucht es erneut`,
  noWindowInTime: ({ seconds }) => `der Desktop-Host zeigte binnen ${seconds} s kein Fenster`,
  electronNotStarted: ({ message }) => `Electron startete nicht: ${message}`,
  electronEnded: ({ code }) => `Electron endete ${ended(code)}, bevor sein Fenster zu sehen war`,
  desktopGaveUp: ({ why }) => why.replace(/\.$/, ''),
  noNamespaces: (_) =>
    'dieses System erlaubt gewöhnlichen Benutzern die Namespaces nicht, aus denen die Sandbox eines Fensters besteht',
  appArmor: ({ profile, place }) =>
    `AppArmor verwehrt Electron die Sandbox. Zum Erlauben eingeben:
  sudo install -m 644 "${profile}" ${place} && sudo apparmor_parser --replace ${place}
und neu starten`,

  electronNamedNowhere: ({ named }) => `BEDPLATE_ELECTRON nennt ${named}, dort ist nichts`,
  electronNamedNoProgram: ({ named }) => `BEDPLATE_ELECTRON nennt ${named}, das ist kein Programm`,
  electronNamedOther: ({ named }) =>
    `BEDPLATE_ELECTRON nennt ${named}, das ist nicht Electron: daneben liegt keine Datei „version“`,
  electronNamedVersion: ({ named, version, wanted }) =>
    `BEDPLATE_ELECTRON nennt ${named}, das ist Electron ${version}; Bedplate braucht ${wanted}`,

  nothingArrived: ({ seconds }) => `${seconds} s lang kam nichts an`,
  serverAnswered: ({ host, status }) => `${host} antwortete ${status}`,
  serverNotReached: ({ host, cause }) => `${host} ist nicht erreichbar: ${cause}`,
  installerPrinted: ({ line }) => line,
  installerLeftNothing: ({ code }) =>
    `das Installationsprogramm endete ${ended(code)} und hinterließ kein Programm`,

  browserAsRoot: (_) => 'als root müsste ein Browser ohne Sandbox laufen',
  noBrowser: (_) => 'weder Chromium noch Chrome noch Edge gefunden, um ein Fenster zu zeigen',
  browserNotStarted: ({ browser, message }) => `${browser} startete nicht: ${message}`,
  browserEnded: ({ browser, code }) => `${browser} endete sofort (${ended(code)})`,
}
