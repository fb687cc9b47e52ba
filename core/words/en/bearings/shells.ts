import { clearance } from './clearance.ts'
import { engineParts } from '../engine-parts.ts'
import type { HalfName, OfPair } from '../../formats/index.ts'
import { pairText } from '../halves.ts'
import { measuring } from './measuring.ts'
import { trayForm } from './tray-form.ts'

export interface OfPlace {
  /** The saddle or rod. */
  readonly position: string
}
export interface OfHalf extends OfPlace {
  readonly half: HalfName
}
export interface OfShell {
  readonly grade: string
  readonly undersize: string | null
}
export interface NamedMark {
  readonly name: string
  readonly mark: string | null
}
/** What may count where two findings differ. */
export type Basis =
  | { readonly by: 'marks' | 'readings' }
  | {
      readonly by: 'declared' | 'measured'
      /** The name of the undersize; null for the standard size. */
      readonly size: string | null
    }

const { halves, standardSize } = engineParts

function basisName(basis: Basis): string {
  return 'size' in basis ? `${basis.size ?? standardSize} (${basis.by})` : `the ${basis.by}`
}

/** A shell for each half saddle: choosing, pinning, deciding. Clearances come with their unit. */
export const shells = {
  take: 'Take these shells',
  allowedWhenNew: ({ least, most }: { readonly least: string; readonly most: string }) =>
    `Oil clearance allowed when new: ${least} to ${most}.`,
  without: ({ positions }: { readonly positions: readonly string[] }) =>
    `Still without shells: ${positions.join(', ')}.`,
  fromTray: 'From the tray.',
  toOrder: ({
    lines,
  }: {
    readonly lines: readonly (OfShell & { half: HalfName | 'either'; count: number })[]
  }) =>
    'To order: ' +
    lines
      .map(({ count, grade, undersize, half }) =>
        [`${count} ×`, grade, undersize, half === 'either' ? null : halves[half]].filter(Boolean).join(' '),
      )
      .join(', ') +
    '.',
  countTray: 'From the tray',
  countTrayAgain: 'Count the tray again',
  orderAndLabels: 'Order and labels',

  row: {
    /** `case F, crank 2`. The names are those of the parts in the spec; a mark is null where it is worn away. */
    marks: ({ housing, journal }: { readonly housing: NamedMark; readonly journal: NamedMark }) =>
      [housing, journal].map(({ name, mark }) => `${name.toLowerCase()} ${mark ?? '?'}`).join(', '),
    noShell: 'no shell proposed',
    noSizes: 'no sizes in the spec',
    measured: 'measured',
    verdict: ({ verdict }: { readonly verdict: keyof typeof clearance.verdicts }) =>
      `! ${clearance.verdicts[verdict]}`,
    differ: { declared: '! declared size and readings differ', mark: '! mark and readings differ' },
    outOfShape: '! out of shape',
    toOrder: ({ of }: { readonly of: readonly HalfName[] }) =>
      `to order: ${of.map((half) => halves[half]).join(', ')}`,
    pinned: 'chosen by hand',
  },

  pair: (pair: OfPair) => pairText(pair),
  allowedPairs: ({ fromTray }: { readonly fromTray: boolean }) =>
    `Other allowed pairs, thinnest first${fromTray ? '; what is chosen by hand is taken from the tray or ordered' : ''}`,
  measure: ({ position }: OfPlace) => `Measure ${position}`,
  release: 'Back to the proposed shells',

  pin: {
    short: 'Choose …',
    pin: ({ position, half }: OfHalf) => `Choose the ${halves[half]} shell of ${position} by hand`,
    half: ({ half, grade, undersize }: OfShell & { readonly half: HalfName }) =>
      `${halves[half]}: ${grade}${undersize === null ? '' : `, ${undersize}`}.`,
    pinnedTo: ({ to }: { readonly to: string }) => `Chosen by hand, ${to}:`,
    what: ({ half }: { readonly half: HalfName }) => `Shell to use in the ${halves[half]} half`,
    whichever: ({ grade }: { readonly grade: string }) => `${grade}, whichever shell`,
    /** A grade, or one shell of the tray by its label. */
    whyHalf: ({ what, half }: { readonly what: string; readonly half: HalfName }) =>
      `Why always ${what} in the ${halves[half]} half?`,
    whyPair: (pair: OfPair) => `Why ${pairText(pair, ' and ')} instead?`,
    pinAt: ({ position }: OfPlace) => `Use this at ${position}`,
    usualReasons: ['Proposed grade is not on the shelf', 'Was fitted before and is good'],
  },

  /** Marks and readings, or a declared size and a reading, that lead to different shells. */
  dispute: {
    by: (basis: Basis) => `By ${basisName(basis)}:`,
    name: basisName,
    noShell: 'no shell',
    let: (basis: Basis) => `Use ${basisName(basis)}`,
    decided: (basis: Basis) => `Decided: ${basisName(basis)}.`,
    why: ({ basis, position }: OfPlace & { readonly basis: Basis }) =>
      `Why use ${basisName(basis)} at ${position}?`,
    usualReasons: {
      marks: ['The gauge was not set right', 'The part was dirty'],
      readings: ['Measured twice, the same', 'The part was replaced'],
      declared: ['Measured at another journal', 'The gauge was not set right'],
      measured: ['Measured twice, the same', 'The crank was ground'],
    },
  },

  undersize: {
    question: 'What the journal is ground to',
    journal: 'Journal:',
    everywhere: ({ fit }: { readonly fit: string }) => `all journals of ${fit}`,
    /** The walls as the spec prints them for this undersize, lengths with their unit. */
    walls: (facts: {
      readonly undersize: string
      readonly walls: readonly { readonly grade: string; readonly least: string; readonly most: string }[]
    }) =>
      `Shells for ${facts.undersize} as printed: ` +
      `${facts.walls.map(({ grade, least, most }) => `${grade}, ${least} to ${most}`).join('; ')}.`,
  },

  clearance: {
    picture: ({ cold, hot }: { readonly cold: string; readonly hot: string | null }) =>
      `Clearance ${cold} between its limits${hot === null ? '' : `; hot ${hot}`}`,
    legend: (facts: { readonly guarded: boolean; readonly hot: boolean; readonly serviceLimit: boolean }) =>
      `Box: limits when new${facts.guarded ? ', hatched where the gauge error reaches past them' : ''}; dots: target. ` +
      `Thin line: worst case; thick: likely; stroke: nominal${facts.hot ? '; dashes: hot' : ''}` +
      `${facts.serviceLimit ? '; line at the right: service limit' : ''}.`,
    worst: ({ worst, likely }: { readonly worst: string; readonly likely: string }) =>
      `Worst case ${worst}, likely ${likely}.`,
    fromReadings: (facts: { readonly least: string; readonly mean: string; readonly greatest: string }) =>
      `From readings: minimum ${facts.least}, mean ${facts.mean}, maximum ${facts.greatest}.`,
    notSure: 'The gauge error is not known: near the limits these readings prove nothing.',
    sureTo: ({ uncertainty, proved }: { readonly uncertainty: string; readonly proved: string }) =>
      `Gauge error ± ${uncertainty}: proved inside only from ${proved}.`,
    hot: ({ at, clearance }: { readonly at: string; readonly clearance: string }) =>
      `Hot, at ${at}: ${clearance}.`,
    serviceLimit: ({ limit, wear }: { readonly limit: string; readonly wear: keyof typeof clearance.wear }) =>
      `Service limit ${limit}: ${clearance.wear[wear]}.`,
  },

  measuring,
  tray: trayForm,
}
