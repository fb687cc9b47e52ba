import type { AmountText } from '../../amount.ts'
import type { OfPair } from '../../formats/index.ts'
import { pairText } from '../halves.ts'

export interface At {
  /** The saddle, rod or bearing; the fit's name where it is about all of them. */
  readonly place: string
}
export interface Counts {
  readonly part: string
  readonly read: number
  readonly expected: number
}

export interface OddReading extends At {
  readonly what: keyof typeof measured
  readonly typed: string
  readonly least: AmountText
  readonly most: AmountText
}
export interface Shape extends At {
  readonly what: 'bore' | 'journal'
  readonly reading: AmountText
  readonly allowed: AmountText
}

/** What is measured of a bearing. */
const measured = {
  bore: 'bore',
  journal: 'journal',
  wall: 'wall',
  'thread-width': 'thread width',
  'card-step': 'step of the card',
} as const

const gaps = { 'end-float': 'end float', 'side-clearance': 'side clearance' } as const

const nameOf = { mm: 'millimetres', in: 'inches', µm: 'micrometres', thou: 'thousandths of an inch' } as const

function cure({ what }: Shape): string {
  return what === 'bore'
    ? 'Check the cap and its bolts, then have the bore resized.'
    : 'Have the journal ground to the next undersize.'
}

/** Sentences about marks, shells and clearances. Sizes come with their unit. */
export const bearingWords = {
  'mark-unknown': (facts: {
    readonly position: string
    readonly part: string
    readonly mark: string
    readonly known: readonly string[]
  }) =>
    `${facts.position}: “${facts.mark}” is not a mark of ${facts.part}. Known marks are ${facts.known.join(', ')}; ` +
    'type ? for one that is worn away.',
  'marks-too-few': ({ part, read, expected }: Counts) =>
    `${part}: ${read} of ${expected} marks were read. Type one for each place, ? for one that is worn away.`,
  'marks-too-many': ({ part, read, expected }: Counts) =>
    `${part}: ${read} marks were read, but there are ${expected} places. Take out what is not a mark.`,
  'marks-ambiguous': ({ part, typed }: { readonly part: string; readonly typed: string }) =>
    `${part}: “${typed}” can be read as marks in more than one way. Put a space between the marks.`,
  'mark-worn': ({ place, part }: At & { readonly part: string }) =>
    `${place}: the mark of ${part} is not known. Measure it and choose the shells from the reading.`,
  'mark-without-band': ({ place, part, mark }: At & { readonly part: string; readonly mark: string }) =>
    `${place}: mark ${mark} of ${part} tells no size: the spec has none for it, or the part was ground since it was marked. ` +
    'Measure it and choose the shells from the reading.',
  'reading-outlier': (facts: {
    readonly place: string
    readonly plane: number
    readonly direction: number
    readonly size: AmountText
    readonly middle: AmountText
  }) =>
    `${facts.place}, plane ${facts.plane}, direction ${facts.direction} reads ${facts.size}, the others about ` +
    `${facts.middle}. Take it again.`,
  'chart-cell-missing': ({
    place,
    housing,
    journal,
  }: At & { readonly housing: string; readonly journal: string }) =>
    `${place}: the chart has no shells for marks ${housing} and ${journal}. Read both marks again, or measure.`,
  'grade-unknown': ({
    place,
    grade,
    known,
  }: At & { readonly grade: string; readonly known: readonly string[] }) =>
    `${place}: ${grade} is not a grade of this fit. Its grades are ${known.join(', ')}.`,
  'wall-unknown': ({ place, grade }: At & { readonly grade: string }) =>
    `${place}: the spec gives no wall thickness for grade ${grade}. Measure the shell's wall.`,
  'no-walls-known': ({ place }: At) =>
    `${place}: the spec gives no wall thickness for its grades. Measure the shells' walls.`,
  'no-pair-inside-limits': (
    facts: At & {
      readonly pair: OfPair
      readonly clearance: AmountText
      readonly limits: AmountText
    },
  ) =>
    `${facts.place}: no allowed pair of shells is sure to stay inside ${facts.limits}; nearest is ` +
    `${pairText(facts.pair, ' with ')}, ${facts.clearance}. Measure bore and journal and choose from the readings.`,
  'clearance-leaves-limits': (facts: At & { readonly clearance: AmountText; readonly limits: AmountText }) =>
    `${facts.place}: clearance ${facts.clearance}, allowed ${facts.limits}. Measure bore, journal and shells ` +
    'before closing it.',
  'size-not-above-zero': ({
    place,
    what,
    typed,
  }: At & { readonly what: keyof typeof measured; readonly typed: string | AmountText }) =>
    `${place}: “${typed}” cannot be a ${measured[what]}. Read the gauge and type it again.`,
  'reading-in-other-unit': (
    facts: OddReading & { readonly unit: keyof typeof nameOf; readonly meant: AmountText },
  ) =>
    `${facts.place}: is “${facts.typed}” meant in ${nameOf[facts.unit]}? That would be ${facts.meant}; a ${measured[facts.what]} ` +
    `of ${facts.least} to ${facts.most} is expected. Type it with its unit.`,
  'reading-far-off': (facts: OddReading) =>
    `${facts.place}: “${facts.typed}” is far from the ${facts.least} to ${facts.most} expected of a ${measured[facts.what]}. ` +
    'Read the gauge again, and check that it is the right part.',
  'readings-missing': (
    facts: At & {
      readonly what: keyof typeof measured
      readonly planes: number
      readonly directions: number
    },
  ) =>
    `${facts.place}: the ${measured[facts.what]} needs ${facts.planes} planes of ${facts.directions} readings each. ` +
    'Type the ones that are missing.',
  'temperature-not-sensible': (facts: {
    readonly of: 'measuring' | 'oil'
    readonly temperature: AmountText
    readonly least: AmountText
    readonly most: AmountText
  }) =>
    `${facts.temperature} is not a temperature for ${facts.of === 'oil' ? 'oil in an engine' : 'measuring at'}. ` +
    `Type one from ${facts.least} to ${facts.most}.`,
  'expansion-unknown': ({ place }: At) =>
    `${place}: the spec does not say how much the parts expand with heat. Measure at 20 °C.`,
  'bore-not-above-journal': ({
    place,
    bore,
    journal,
  }: At & { readonly bore: AmountText; readonly journal: AmountText }) =>
    `${place}: the bore, ${bore}, is not larger than the journal, ${journal}. Check that both belong here and ` +
    'measure again.',
  'gauge-too-coarse': ({
    limits,
    uncertainty,
  }: {
    readonly limits: AmountText
    readonly uncertainty: AmountText
  }) =>
    `With a gauge error of ± ${uncertainty} no reading can prove a size inside ${limits}. Use a finer gauge.`,
  'mark-against-size': (
    facts: At & {
      readonly part: string
      readonly mark: string
      readonly least: AmountText
      readonly most: AmountText
      readonly size: AmountText
      readonly wouldBe: string | null
    },
  ) =>
    `${facts.place}: ${facts.part} is marked ${facts.mark}, which is ${facts.least} to ${facts.most}, but measures ` +
    `${facts.size}, ${facts.wouldBe === null ? 'which no mark stands for' : `as mark ${facts.wouldBe} would`}. ` +
    'Measure again, then decide which counts and say why.',
  'out-of-round': (facts: Shape) =>
    `${facts.place}: the ${facts.what} is out of round by ${facts.reading}, allowed ${facts.allowed}. ${cure(facts)}`,
  tapered: (facts: Shape) =>
    `${facts.place}: the ${facts.what} is tapered by ${facts.reading}, allowed ${facts.allowed}. ${cure(facts)}`,
  'shell-worn': (facts: { readonly label: string; readonly wall: AmountText; readonly least: AmountText }) =>
    `${facts.label}: a wall of ${facts.wall} is worn, and a used shell may go back from ${facts.least} on. Replace both halves of its ` +
    'bearing, and take it out of the tray.',
  'undersize-unknown': ({
    place,
    name,
    known,
  }: At & { readonly name: string; readonly known: readonly string[] }) =>
    `${place}: the spec has no undersize ${name}. It has ${known.length === 0 ? 'none' : known.join(', ')}.`,
  'undersize-against-size': (
    facts: At & {
      readonly declared: string | null
      readonly size: AmountText
      readonly measured: string | null
    },
  ) =>
    `${facts.place}: the journal is declared ${facts.declared ?? 'standard'}, but measures ${facts.size}, which is ` +
    `${facts.measured ?? 'standard'}. Measure again, then decide which counts and say why.`,
  'journal-sizes-unknown': ({ place, part }: At & { readonly part: string }) =>
    `${place}: the spec gives no sizes of ${part} to tell an undersize by. Choose the undersize yourself.`,
  'journal-of-no-size': (
    facts: At & {
      readonly journal: AmountText
      readonly next: { readonly name: string; readonly least: AmountText; readonly most: AmountText } | null
    },
  ) =>
    `${facts.place}: a journal of ${facts.journal} is neither standard nor an undersize. ` +
    (facts.next === null
      ? 'There is no undersize that it could be ground to; measure again.'
      : `Measure again, or have it ground to ${facts.next.name}, ${facts.next.least} to ${facts.next.most}.`),
  'washer-not-defined': ({ place, float }: At & { readonly float: AmountText }) =>
    `${place}: which washers an end float of ${float} asks for is not defined in the spec. Measure again; if it ` +
    'stays, ask the maker.',
  'no-thrust-pair': (
    facts: At & {
      readonly gap: AmountText
      readonly nearest: {
        readonly first: string
        readonly second: string
        readonly float: AmountText
      } | null
      readonly least: AmountText
      readonly most: AmountText
    },
  ) =>
    `${facts.place}: no thrust washers of the spec leave an end float of ${facts.least} to ${facts.most} in a gap of ${facts.gap}` +
    (facts.nearest === null
      ? '. '
      : `; nearest are ${facts.nearest.first} and ${facts.nearest.second} with ${facts.nearest.float}. `) +
    'Measure again; if it stays, crank or saddle is worn.',
  'gap-outside-limits': (facts: {
    /** The saddle; null for the rods, all alike. */
    readonly place: string | null
    readonly gap: keyof typeof gaps
    readonly reading: AmountText
    readonly least: AmountText
    readonly most: AmountText
  }) =>
    `${facts.place ?? 'The rods'}: ${gaps[facts.gap]} ${facts.reading}, allowed ${facts.least} to ${facts.most}. ` +
    (facts.gap === 'end-float'
      ? 'Fit other thrust washers and measure again.'
      : 'Check rod and crank for wear.'),
  'labels-alike': ({ label }: { readonly label: string }) =>
    `Two lines of the tray are labelled ${label}. Give each a label of its own.`,
  'count-not-whole': ({ label, count }: { readonly label: string; readonly count: number }) =>
    `${label}: ${count} is not a number of shells. Count them and type a whole number, 0 or more.`,
  'pinned-outside': ({ place }: At) =>
    `${place}: with the shells chosen by hand here no pair is allowed and inside the limits. Go back to the proposed shells.`,
  'tray-too-small': ({ place }: At) =>
    `${place}: the tray has not enough shells for every bearing, and the spec gives no walls to order by. ` +
    'Measure more shells.',
}
