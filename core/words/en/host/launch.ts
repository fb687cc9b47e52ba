import type { PhraseText } from '../../phrase.ts'

export interface AtFolder {
  readonly folder: string
}
/**
 * What the launcher and the local host say on the terminal. What is said before TypeScript runs stands in
 * `electron/launch/words/`.
 */
export const launch = {
  inDesktopHost: 'Bedplate runs in the desktop host.',
  inLocalHost: ({ why }: { readonly why: PhraseText }) => `Bedplate runs in the local host: ${why}.`,
  at: ({ address }: { readonly address: string }) => `Bedplate is at ${address}`,
  shopJoined: ({ address }: { readonly address: string }) => `Joined the shop at ${address}.`,
  shopNotJoined: ({ why }: { readonly why: string }) =>
    `The shop was not joined: ${why} The bench works on by itself; the page “Shop” takes another address.`,
  shopSilent: ({ address, why }: { readonly address: string; readonly why: string }) =>
    `The shop at ${address} does not answer this bench: ${why} The bench works on by itself; what is confirmed is sent when that is put right.`,
  openYourself: ({ why }: { readonly why: PhraseText }) =>
    `Open the address below in a browser yourself: ${why}.`,
  specsNoFolder: ({ folder }: AtFolder) =>
    `--specs names ${folder}, which is not a folder. Name the one in which the engine specs lie.`,
  noFile: ({ file }: { readonly file: string }) =>
    `${file} is not a file. What can be opened is an exported build (.bedplate) or an engine spec (.json).`,
  building: ({ target }: { readonly target: 'renderer' | 'local' | 'desktop' }) =>
    `Building the ${{ renderer: 'window', local: 'local host', desktop: 'desktop host' }[target]} (its sources are new) …`,
  buildingFailed: 'Building failed; the lines above say where.',
  windowNotBuilt: 'The window is not built yet. Start with `npm start`.',

  /** While Electron is downloaded. */
  fetching: {
    begins: 'Fetching Electron, about 110 MB, for a window of its own …',
    arrived: ({ megabytes, of }: { readonly megabytes: number; readonly of: number | null }) =>
      `  … ${megabytes} MB${of === null ? '' : ` of ${of} MB`}`,
  },
}
