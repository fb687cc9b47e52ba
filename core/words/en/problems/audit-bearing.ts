import type { AmountText } from '../../amount.ts'
import type { OfPair } from '../../formats/index.ts'
import { pairText } from '../halves.ts'
import type { At, OfFit } from './audit.ts'

export interface OfUndersizeWall extends OfFit {
  readonly name: string
  readonly grade: string
  readonly printed: AmountText
  readonly expected: AmountText
}
export interface OfMarks extends OfFit {
  readonly housing: string
  readonly journal: string
}
export interface Clearance {
  readonly clearance: AmountText
  readonly limits: AmountText
}

/** What the family of a case says of its halves. */
const families = {
  'split-horizontal': 'the case is split level, into an upper and a lower half',
  'split-vertical': 'the case is split upright',
  caps: 'the case has caps under its saddles',
  bedplate: 'the case stands on a bedplate',
  tunnel: 'the crank goes into a tunnel',
}

/** What a fit says of the two halves of one bearing. */
const rules = {
  'one-grade': 'the halves of one bearing must be of one grade',
  neighbours: 'only neighbouring grades may be mixed',
  'thicker-upper': 'the upper half takes the thicker wall',
  'thicker-lower': 'the lower half takes the thicker wall',
  'thicker-left': 'the left half takes the thicker wall',
  'thicker-right': 'the right half takes the thicker wall',
}

/** Sentences about what is wrong or doubtful in the bearings of a spec: bands, grades, undersizes and charts. */
export const auditBearingWords = {
  // Bands and grades
  'band-reversed': ({ place, over, upTo }: At & { over: AmountText; upTo: AmountText }) =>
    `${place}: the band runs from ${over} to ${upTo}, the wrong way or over nothing. Correct one of the two.`,
  'bands-overlap': ({ place, first, second }: At & { first: string; second: string }) =>
    `${place}: the bands of mark ${first} and mark ${second} overlap, so that a size has two marks. Correct one of them.`,
  'bands-gap': (facts: At & { first: string; second: string; from: AmountText; to: AmountText }) =>
    `${facts.place}: between mark ${facts.first} and mark ${facts.second}, sizes over ${facts.from} up to ${facts.to} have no ` +
    'mark. Check whether a band is misprinted.',
  'bands-not-as-drawn': (
    facts: At & {
      drawn: string
      limits: AmountText
      bands: AmountText
      width: AmountText
      classes: readonly string[]
    },
  ) =>
    `${facts.place}: the drawing says ${facts.drawn}, which is ${facts.limits}; the bands of the marks go from ${facts.bands}` +
    (facts.classes.length === 0
      ? `, ${facts.width} wide, and are of no tolerance class of ISO 286 that is known here. `
      : `, which would be ${facts.classes.join(' or ')}. `) +
    'Compare both with the drawing.',
  'band-wide': ({ place, width }: At & { width: AmountText }) =>
    `${place}: a band ${width} wide is unusual for a bearing. Check both ends of it and their unit.`,
  'band-missing': ({ place }: At) =>
    `${place} has no band while others have. Add it, so that its clearance can be calculated.`,
  'bore-far-from-nominal': (facts: At & { band: AmountText; bearing: string; nominal: AmountText }) =>
    `${facts.place}: ${facts.band} is far from the ${facts.nominal} that ${facts.bearing} is drawn with. ` +
    'Check both, and their unit.',
  'nothing-to-choose-by': ({ fit }: OfFit) =>
    `${fit}: there is neither a chart nor a band for every mark and grade, so no shell can be chosen. Give one of them.`,
  'grades-not-ascending': ({ fit, first, second }: OfFit & { first: string; second: string }) =>
    `${fit}: grade ${second} is listed after ${first} and is not thicker. List the grades from thin to thick.`,
  'grades-overlap': ({ fit, first, second }: OfFit & { first: string; second: string }) =>
    `${fit}: the walls of grades ${first} and ${second} overlap. Check both bands.`,
  'grades-look-alike': ({ fit, first, second }: OfFit & { first: string; second: string }) =>
    `${fit}: grades ${first} and ${second} have the same colour and pattern. Give one of them another.`,
  'undersize-large': ({ fit, name, undersize }: OfFit & { name: string; undersize: AmountText }) =>
    `${fit}: nobody grinds ${undersize} off a journal (“${name}”). Check the value and its unit.`,
  'undersize-twice': ({ fit, name, undersize }: OfFit & { name: string; undersize: AmountText }) =>
    `${fit}: the undersize ${undersize} is there twice, or has two names (“${name}”). Keep one.`,
  'split-against-family': ({ fit, family }: OfFit & { readonly family: keyof typeof families }) =>
    `${fit}: its halves are left and right, but ${families[family]}. Correct how the halves lie, or the kind of case.`,
  'undersize-grade-unknown': ({ fit, name, grade }: OfFit & { name: string; grade: string }) =>
    `${fit}, ${name}: ${grade} is not a grade of this fit. Correct it, or list it among the grades.`,
  'undersize-grade-twice': ({ fit, name, grade }: OfFit & { name: string; grade: string }) =>
    `${fit}, ${name}: there are two walls for grade ${grade}. Keep one.`,
  'undersize-wall-off': (facts: OfUndersizeWall) =>
    `${facts.fit}, ${facts.name}: grade ${facts.grade} is printed as ${facts.printed}, and by half of the undersize it would be ` +
    `${facts.expected}. Look at both again.`,
  'undersize-wall-full': (facts: OfUndersizeWall) =>
    `${facts.fit}, ${facts.name}: grade ${facts.grade}, ${facts.printed}, is thicker than the standard one by the whole undersize. The ` +
    `two halves share it: ${facts.expected}.`,
  'worn-wall-above-new': ({ fit, name, worn }: OfFit & { name: string | null; worn: AmountText }) =>
    `${fit}${name === null ? '' : `, ${name}`}: a used shell would be worn at ${worn}, and some new ones are thinner. Correct one of ` +
    'the two.',
  'taper-length-incomplete': ({ fit }: OfFit) =>
    `${fit}: a taper for a length needs the taper, two measuring planes at least, and how far the first is from the last. Add what ` +
    'is missing.',
  'planes-beyond-bearing': (facts: OfFit & { apart: AmountText; width: AmountText }) =>
    `${facts.fit}: measuring planes ${facts.apart} apart do not lie within a bearing ${facts.width} wide. Correct one of the two.`,
  'position-in-two-fits': ({
    position,
    first,
    second,
  }: {
    position: string
    first: string
    second: string
  }) => `${position} is in ${first} and in ${second}: it would get its shells twice. Take it out of one.`,

  // Charts
  'chart-mark-unknown': (facts: OfFit & { part: string; mark: string; known: readonly string[] }) =>
    `${facts.fit}: the chart has a cell for mark ${facts.mark} of ${facts.part}, which is not one of ` +
    `${facts.known.join(', ')}. Correct the cell, or add the mark.`,
  'chart-grade-unknown': (facts: OfMarks & { grade: string; known: readonly string[] }) =>
    `${cell(facts)}: ${facts.grade} is not a grade of this fit. Its grades are ${facts.known.join(', ')}.`,
  'chart-cell-absent': (facts: OfMarks & { positions: readonly string[] }) =>
    `${cell(facts)}: the chart has no shells for ${facts.positions.join(', ')}. Add the cell, or say why it is empty.`,
  'chart-cell-twice': (facts: OfMarks) =>
    `${cell(facts)}: the chart has two cells for one bearing. Keep one.`,
  'chart-mixes-against-rule': (facts: OfMarks & OfPair & { rule: keyof typeof rules }) =>
    `${cell(facts)}: ${pairText(facts, ' with ')}, but ${rules[facts.rule]}. Correct the cell, or the rule.`,
  'chart-leaves-limits': (facts: OfMarks & Clearance & OfPair) =>
    `${cell(facts)}: ${pairText(facts, ' with ')} can give a clearance of ${facts.clearance}, by ` +
    `their bands; allowed is ${facts.limits}. Check the cell and the bands.`,
  'chart-misses-limits': (facts: OfMarks & Clearance & OfPair) =>
    `${cell(facts)}: ${pairText(facts, ' with ')} give a clearance of ${facts.clearance}, by their ` +
    `bands, nowhere inside ${facts.limits}. Correct the cell or the bands.`,
  'bands-leave-limits': (facts: OfMarks & Clearance & OfPair) =>
    `${cell(facts)}: the best pair, ${pairText(facts, ' with ')}, can give ${facts.clearance}; ` +
    `allowed is ${facts.limits}. Check the bands and the limits.`,
  'bands-miss-limits': (facts: OfMarks & Clearance & OfPair) =>
    `${cell(facts)}: no pair of grades comes inside ${facts.limits}; the nearest, ` +
    `${pairText(facts, ' with ')}, gives ${facts.clearance}. Correct the bands or the limits.`,
}

function cell({ fit, housing, journal }: OfMarks): string {
  return `${fit}, marks ${housing} and ${journal}`
}
