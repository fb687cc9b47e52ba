import type { PhraseText } from '../../phrase.ts'
import type { ReasonText } from '../../reason.ts'
import { counted, day, dayAndTime, fixed } from '../formats.ts'

const subjects = {
  program: 'program',
  host: 'host',
  'data-folder': 'data folder',
  disk: 'disk',
  record: 'record',
  photos: 'photos',
  backup: 'backup',
  shop: 'shop',
  fonts: 'fonts',
  screen: 'screen',
  voices: 'voices',
  instruments: 'instruments',
}
const terminalSigns = { good: 'ok  ', look: 'look', bad: 'BAD ' }

/** How the program stands, to be read out over the phone: a line for each subject. */
export const doctor = {
  subjects,
  /** The same on a terminal; the text is the one that `lines` makes. */
  terminalLine: (facts: {
    readonly subject: keyof typeof subjects
    readonly state: keyof typeof terminalSigns
    readonly text: string
  }) => `${terminalSigns[facts.state]}  ${subjects[facts.subject]}: ${facts.text}`,
  restInWindow:
    'Fonts, screen, voices and instruments can only be checked by the window: see its page “Record and backups”.',
  signs: { good: '✓', look: '? check', bad: '! bad' },
  fontsLookedAt: 'Checking …',
  fontsLoaded: ({ font }: { readonly font: string }) => `${font} is loaded, plain and bold.`,
  fontsMissing: ({ font, weights }: { readonly font: string; readonly weights: readonly string[] }) =>
    `${font} is not loaded (${weights.join(', ')}), so text and numbers may be cut off. Start the program again; if ` +
    'that does not help, install it again.',
  screen: (facts: {
    readonly widthPx: number
    readonly heightPx: number
    readonly scale: number
    readonly distance: number
    readonly pxPerMm: number
    readonly measured: boolean
  }) =>
    `The window is ${facts.widthPx} by ${facts.heightPx} points at ${Math.round(facts.scale * 100)} % scale. ` +
    `It is read from ${facts.distance} m, with ${fixed(facts.pxPerMm, 2)} points to a millimetre, ` +
    (facts.measured
      ? 'as measured against a card.'
      : 'which is a guess: measure the screen under “Screen and keys”.'),
  voices: {
    'cannot-speak': 'This browser cannot speak. Prompts are shown on the screen alone.',
    none: 'There is no English voice that works without a network, so prompts are shown on the screen alone.',
  },
  voiceUsed: ({ voice, on }: { readonly voice: string; readonly on: boolean }) =>
    on
      ? `Prompts are said aloud with the voice ${voice}.`
      : `Prompts are not said aloud. The voice ${voice} is there: switch it on under “Instruments and voice”.`,
  instruments: {
    none: 'No instrument on a serial line is written down.',
    'no-serial': 'This browser has no Web Serial: instruments on a serial line cannot be read here.',
  },
  instrumentsOpen: ({ open, names }: { readonly open: number; readonly names: readonly string[] }) =>
    `${names.join(', ')}: ${open} of ${names.length} connected.`,

  /** What the host says of itself. */
  lines: {
    program: (facts: {
      readonly version: string
      readonly electron: string | null
      readonly node: string
      readonly platform: string
      readonly arch: string
    }) =>
      `Bedplate ${facts.version} on ${facts.electron === null ? '' : `Electron ${facts.electron} with `}` +
      `Node ${facts.node}, ${facts.platform} ${facts.arch}.`,
    host: ({ host, why }: { readonly host: string; readonly why: PhraseText }) =>
      `It runs in the ${host} host: ${why}.`,
    'folder-closed': ({ folder }: OfFolder) => `The data folder ${folder} cannot be written by this user.`,
    'folder-to-come': ({ folder }: OfFolder) =>
      `The data folder ${folder} is not there yet; it is made at the first start.`,
    'folder-open-to-others': ({ folder }: OfFolder) =>
      `The data folder ${folder} can be written, but other users of this computer can read it.`,
    'folder-of-this-user': ({ folder }: OfFolder) =>
      `The data folder ${folder} can be written, by this user alone.`,
    'disk-full': ({ megabytes }: { readonly megabytes: number }) =>
      `Only ${megabytes} MB are free on its disk. Free some space before continuing.`,
    'disk-free': ({ megabytes }: { readonly megabytes: number }) => `${megabytes} MB are free on its disk.`,
    'disk-unknown': (_: None) => 'The free space on its disk is not known.',
    'record-to-come': (_: None) => 'There is no record yet; it is made at the first start.',
    'record-in-use': (_: None) => 'The record is in use: Bedplate is running.',
    'record-closed': ({ why }: { readonly why: ReasonText }) => why,
    'record-opens': ({ builds, megabytes }: { readonly builds: number; readonly megabytes: number }) =>
      `The record opens; it holds ${counted(builds, 'build', 'builds')} in ${megabytes} MB.`,
    'photos-there': ({ photos, megabytes }: { readonly photos: number; readonly megabytes: number }) =>
      `The builds have ${counted(photos, 'photo', 'photos')} in ${megabytes} MB; all are as recorded.`,
    'photos-not-there': (facts: {
      readonly photos: number
      readonly damaged: number
      readonly missing: number
    }) =>
      `Of ${counted(facts.photos, 'photo', 'photos')} ${facts.damaged} are damaged and ${facts.missing} are missing. The builds are ` +
      'not touched by it. Verify the archive to see which they are.',
    'shop-connected': ({ address, entries }: { readonly address: string; readonly entries: number }) =>
      `Joined at ${address}. ${entries === 0 ? 'Nothing waits to be sent.' : `${counted(entries, 'entry waits', 'entries wait')} to be sent.`}`,
    'shop-not-reached': (facts: {
      readonly why: ReasonText
      readonly since: string | null
      readonly entries: number
    }) =>
      `${facts.why}${facts.since === null ? '' : ` So since ${dayAndTime(facts.since)}.`} ${counted(facts.entries, 'entry waits', 'entries wait')} here to be sent.`,
    'shop-refused': ({ refused, apart }: { readonly refused: number; readonly apart: number }) =>
      `${counted(refused, 'build was', 'builds were')} refused, and ${counted(apart, 'build was', 'builds were')} continued at two benches apart. See the page “Shop”.`,
    'backup-none': (facts: OfSecondFolder) => `There is no backup. ${secondFolderText(facts)}`,
    'backup-of-later': (facts: OfSecondFolder & { readonly on: string; readonly today: string }) =>
      `The last backup is dated ${day(facts.on)}, and the clock of this computer says ${day(facts.today)}. One of the two is ` +
      `wrong. ${secondFolderText(facts)}`,
    'backup-newest': (
      facts: OfSecondFolder & {
        readonly days: number
        readonly builds: number
        readonly entries: number
        readonly head: string
        readonly broken: number
      },
    ) =>
      `The last backup is ${ageText(facts.days)} old (${counted(facts.builds, 'build', 'builds')}, ` +
      `${counted(facts.entries, 'entry', 'entries')}, head ${facts.head}).` +
      (facts.broken === 0 ? '' : ' Not all of it was as confirmed when it was made; verify the archive.') +
      ` ${secondFolderText(facts)}`,
  },
}

type None = Record<never, never>

export interface OfFolder {
  readonly folder: string
}
export interface OfSecondFolder {
  readonly secondFolder: string | null
}

function secondFolderText({ secondFolder }: OfSecondFolder): string {
  return secondFolder === null ? 'No second folder is chosen.' : `The second folder is ${secondFolder}.`
}

function ageText(days: number): string {
  if (days <= 0) return 'less than a day'
  return days === 1 ? 'one day' : `${days} days`
}
