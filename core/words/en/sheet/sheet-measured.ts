import { engineParts } from '../engine-parts.ts'

export interface Decided {
  readonly reason: string
  /** When and by whom. */
  readonly stamp: string
}
export interface PrintedReadings {
  /** The part’s name in the spec. */
  readonly part: string
  /** As typed: readings of a plane with commas, planes with strokes between. */
  readonly cells: string
  /** Temperatures as typed; null where nothing was typed. */
  readonly partAt: string
  readonly gaugeAt: string | null
  readonly sureTo: string | null
  /** A reading that does not go with the others was asked about, and is right. */
  readonly sure: boolean
  /** At 20 °C, with the unit. */
  readonly least: string
  readonly mean: string
  readonly greatest: string
  readonly outOfRound: string
  readonly taper: string
}

/** What was measured and decided, on the build sheet. */
export const sheetMeasured = {
  title: 'Measured and decided',
  reground: ({ undersize }: { readonly undersize: string }) => `Journal reground: ${undersize}.`,
  /** `undersize` is null for the standard size. */
  sizeDecided: ({ undersize, reason, stamp }: Decided & { readonly undersize: string | null }) =>
    `Decided: the journal counts as ${undersize ?? engineParts.standardSize}: ${reason} (${stamp}).`,
  readings: (facts: PrintedReadings) =>
    `${facts.part}: ${facts.cells}; part at ${facts.partAt}` +
    (facts.gaugeAt === null ? '' : `, gauge at ${facts.gaugeAt}`) +
    (facts.sureTo === null ? '' : `, gauge error ± ${facts.sureTo}`) +
    `. At 20 °C: ${facts.least}, ${facts.mean}, ${facts.greatest} (minimum, mean, maximum); ` +
    `out of round ${facts.outOfRound}, taper ${facts.taper}.` +
    (facts.sure ? ' A reading off the others was asked about: taken again, and right.' : ''),
  basisDecided: ({ by, reason, stamp }: Decided & { readonly by: 'marks' | 'readings' }) =>
    `Decided: the ${by} count: ${reason} (${stamp}).`,
  byReadings: 'Chosen by the readings.',
  pinned: ({ reason }: { readonly reason: string }) => `Chosen by hand: ${reason}`,
  thread: ({ typed, verdict }: { readonly typed: string; readonly verdict: keyof typeof verdicts }) =>
    `Plastic gauge ${typed}: ${verdicts[verdict]}.`,
  tray: ({ stamp, lines }: { readonly stamp: string; readonly lines: readonly string[] }) =>
    `Tray (${stamp}): ${lines.join(', ')}.`,
  /** `wall` as typed, with its unit; null for one that was not measured. */
  trayLine: (facts: { readonly count: number; readonly label: string; readonly wall: string | null }) =>
    `${facts.count} × ${facts.label}${facts.wall === null ? '' : ` (wall ${facts.wall})`}`,
}

const verdicts = {
  agrees: 'agrees',
  'says-tighter': '! less than calculated',
  'says-looser': '! more than calculated',
  'not-compared': 'not compared',
}
