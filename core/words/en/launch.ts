export interface AtFolder {
  readonly folder: string
}
export interface OfNamed {
  /** What the environment variable names. */
  readonly named: string
}

/** How a program ended, where it is not known by what it said. */
const ended = (code: number | null) => (code === null ? 'a signal' : String(code))

/**
 * What the launcher and the local host say on the terminal. What is said before TypeScript runs stands in
 * `electron/launch/words.mjs`.
 */
export const launch = {
  inDesktopHost: 'Bedplate runs in the desktop host.',
  /** `why` is one of the clauses below. */
  inLocalHost: ({ why }: { readonly why: string }) => `Bedplate runs in the local host: ${why}.`,
  at: ({ address }: { readonly address: string }) => `Bedplate is at ${address}`,
  openYourself: ({ why }: { readonly why: string }) =>
    `Open the address below in a browser yourself: ${why}.`,
  specsNoFolder: ({ folder }: AtFolder) =>
    `--specs names ${folder}, which is not a folder. Name the one in which the engine specs lie.`,
  noFile: ({ file }: { readonly file: string }) =>
    `${file} is not a file. What can be opened is an exported build (.bedplate) or an engine spec (.json).`,
  building: ({ target }: { readonly target: 'renderer' | 'local' | 'desktop' }) =>
    `Building the ${{ renderer: 'window', local: 'local host', desktop: 'desktop host' }[target]} (its sources are new) …`,
  buildingFailed: 'Building failed; the lines above say where.',
  windowNotBuilt: 'The window is not built yet. Start with `npm start`.',

  /** Why it is this host, as clauses. */
  hosts: {
    electronThere: 'Electron is there',
    electronToCome: 'Electron is not there yet; the next start tries to fetch it',
    byItself: 'it was started by itself',
    noWindowAsked: 'no window was asked for',
    askedFor: 'it was asked for by --local',
    asRoot: 'as root a window would have to run without its sandbox',
    noDisplay: 'there is no display',
    notFetched: ({ why }: { readonly why: string }) =>
      `Electron could not be fetched (${why}); \`npm start -- --fetch-electron\` tries again`,
    noWindowInTime: ({ seconds }: { readonly seconds: number }) =>
      `the desktop host showed no window within ${seconds} s`,
    electronNotStarted: ({ message }: { readonly message: string }) => `Electron did not start: ${message}`,
    electronEnded: ({ code }: { readonly code: number | null }) =>
      `Electron ended with ${ended(code)} before its window was seen`,
    noNamespaces: 'this system lets no ordinary user make the namespaces that a window’s sandbox is made of',
    appArmor: ({ profile, place }: { readonly profile: string; readonly place: string }) =>
      `AppArmor keeps Electron from making its sandbox. To allow it, type
  sudo install -m 644 "${profile}" ${place} && sudo apparmor_parser --replace ${place}
and start again`,
  },

  /** Why what `BEDPLATE_ELECTRON` names cannot be used, as clauses. */
  electronNamed: {
    nothing: ({ named }: OfNamed) => `BEDPLATE_ELECTRON names ${named}, where there is nothing`,
    noProgram: ({ named }: OfNamed) => `BEDPLATE_ELECTRON names ${named}, which is not a program`,
    notElectron: ({ named }: OfNamed) =>
      `BEDPLATE_ELECTRON names ${named}, which is not Electron: no file “version” lies with it`,
    otherVersion: ({
      named,
      version,
      wanted,
    }: OfNamed & { readonly version: string; readonly wanted: string }) =>
      `BEDPLATE_ELECTRON names ${named}, which is Electron ${version}, and Bedplate needs ${wanted}`,
  },

  /** While Electron is downloaded, and why it could not be, as clauses. */
  fetching: {
    begins: 'Fetching Electron, about 110 MB, for a window of its own …',
    arrived: ({ megabytes, of }: { readonly megabytes: number; readonly of: number | null }) =>
      `  … ${megabytes} MB${of === null ? '' : ` of ${of} MB`}`,
    nothingArrived: ({ seconds }: { readonly seconds: number }) => `nothing arrived for ${seconds} s`,
    answered: ({ host, status }: { readonly host: string; readonly status: number }) =>
      `${host} answered ${status}`,
    notReached: ({ host, cause }: { readonly host: string; readonly cause: string }) =>
      `${host} cannot be reached: ${cause}`,
    leftNothing: ({ code }: { readonly code: number | null }) =>
      `its installer ended with ${ended(code)} and left no program behind`,
  },

  /** Why no browser window was opened, as clauses. */
  browserWindow: {
    asRoot: 'as root a browser would have to run without its sandbox',
    noDisplay: 'there is no display',
    none: 'no Chromium, Chrome or Edge was found that could show a window',
    notStarted: ({ browser, message }: { readonly browser: string; readonly message: string }) =>
      `${browser} did not start: ${message}`,
    endedAtOnce: ({ browser, code }: { readonly browser: string; readonly code: number | null }) =>
      `${browser} ended at once (${ended(code)})`,
  },
}
