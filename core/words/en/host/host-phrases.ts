import type { PhraseText } from '../../phrase.ts'
import type { ReasonText } from '../../reason.ts'

type None = Record<never, never>

export interface OfNamed {
  /** What the environment variable names. */
  readonly named: string
}

/** How a program ended, where it is not known by what it said. */
const ended = (code: number | null) => (code === null ? 'a signal' : String(code))

/** Why it is this host and not the other, and what each of that has for a reason; clauses, without a full stop. */
export const hostPhrases = {
  electronThere: (_: None) => 'Electron is there',
  electronToCome: (_: None) => 'Electron is not there yet; the next start tries to fetch it',
  hostByItself: (_: None) => 'it was started by itself',
  noWindowAsked: (_: None) => 'no window was asked for',
  localAsked: (_: None) => 'it was asked for by --local',
  windowAsRoot: (_: None) => 'as root a window would have to run without its sandbox',
  noDisplay: (_: None) => 'there is no display',
  electronNotFetched: ({ why }: { readonly why: PhraseText }) =>
    `Electron could not be fetched (${why}); \`npm start -- --fetch-electron\` tries again`,
  noWindowInTime: ({ seconds }: { readonly seconds: number }) =>
    `the desktop host showed no window within ${seconds} s`,
  electronNotStarted: ({ message }: { readonly message: string }) => `Electron did not start: ${message}`,
  electronEnded: ({ code }: { readonly code: number | null }) =>
    `Electron ended with ${ended(code)} before its window was seen`,
  desktopGaveUp: ({ why }: { readonly why: ReasonText }) => why.replace(/\.$/, ''),
  noNamespaces: (_: None) =>
    'this system lets no ordinary user make the namespaces that a window’s sandbox is made of',
  appArmor: ({ profile, place }: { readonly profile: string; readonly place: string }) =>
    `AppArmor keeps Electron from making its sandbox. To allow it, type
  sudo install -m 644 "${profile}" ${place} && sudo apparmor_parser --replace ${place}
and start again`,

  // Why what `BEDPLATE_ELECTRON` names cannot be used
  electronNamedNowhere: ({ named }: OfNamed) => `BEDPLATE_ELECTRON names ${named}, where there is nothing`,
  electronNamedNoProgram: ({ named }: OfNamed) => `BEDPLATE_ELECTRON names ${named}, which is not a program`,
  electronNamedOther: ({ named }: OfNamed) =>
    `BEDPLATE_ELECTRON names ${named}, which is not Electron: no file “version” lies with it`,
  electronNamedVersion: ({
    named,
    version,
    wanted,
  }: OfNamed & { readonly version: string; readonly wanted: string }) =>
    `BEDPLATE_ELECTRON names ${named}, which is Electron ${version}, and Bedplate needs ${wanted}`,

  // Why Electron could not be fetched
  nothingArrived: ({ seconds }: { readonly seconds: number }) => `nothing arrived for ${seconds} s`,
  serverAnswered: ({ host, status }: { readonly host: string; readonly status: number }) =>
    `${host} answered ${status}`,
  serverNotReached: ({ host, cause }: { readonly host: string; readonly cause: string }) =>
    `${host} cannot be reached: ${cause}`,
  /** The first line of what the installer of Electron printed. */
  installerPrinted: ({ line }: { readonly line: string }) => line,
  installerLeftNothing: ({ code }: { readonly code: number | null }) =>
    `its installer ended with ${ended(code)} and left no program behind`,

  // Why no browser window was opened
  browserAsRoot: (_: None) => 'as root a browser would have to run without its sandbox',
  noBrowser: (_: None) => 'no Chromium, Chrome or Edge was found that could show a window',
  browserNotStarted: ({ browser, message }: { readonly browser: string; readonly message: string }) =>
    `${browser} did not start: ${message}`,
  browserEnded: ({ browser, code }: { readonly browser: string; readonly code: number | null }) =>
    `${browser} ended at once (${ended(code)})`,
}
