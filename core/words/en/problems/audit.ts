import type { AmountText } from '../../amount.ts'
import type { PhraseText } from '../../phrase.ts'
import { capital } from '../capital.ts'
import { pairText, type OfPair } from '../halves.ts'
import type { OfProcedure } from './audit-tightening.ts'

export interface OfFit {
  readonly fit: string
}
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
export interface At {
  readonly place: PhraseText
}
export interface OfPlace {
  readonly what: PhraseText
  readonly face: string
  /** Along the crank and across. */
  readonly x: AmountText
  readonly y: AmountText
}
export interface OfBead {
  readonly bead: string
}

/** What a check measures, where the spec has limits for that elsewhere too. */
const gaps = { 'end-float': 'end float', 'rod-side': 'rod side clearance' }

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

const shellSteps = {
  'note-housing-marks': 'note the housing marks',
  'note-journal-marks': 'note the journal marks',
  'choose-shells': 'choose the shells',
  'fit-shells': 'fit the shells',
}

type Work =
  | { readonly kind: 'note-marks'; readonly part: 'housing' | 'journal'; readonly fit: string }
  | { readonly kind: 'choose-shells' | 'fit-shells'; readonly fit: string }
  | { readonly kind: 'lay-bead'; readonly bead: string }
  | { readonly kind: 'run-procedure'; readonly procedure: string }

/** Sentences about what is wrong or doubtful in the engine that a spec describes, but for its tightening. */
export const auditWords = {
  // Limits
  'least-above-most': ({ place, least, most }: At & { least: AmountText; most: AmountText }) =>
    `${capital(place)}: the minimum, ${least}, is above the maximum, ${most}. One of the two is misprinted or mistyped.`,
  'target-outside-limits': (
    facts: At & { target: AmountText; least: AmountText | null; most: AmountText | null },
  ) =>
    `${capital(facts.place)}: the target, ${facts.target}, is not within ${facts.least ?? '…'} to ${facts.most ?? '…'}. Correct one of them.`,
  'service-limit-below-most': ({ fit, limit, most }: OfFit & { limit: AmountText; most: AmountText }) =>
    `${fit}: the service limit, ${limit}, is below the maximum for new parts, ${most}. Correct one of them.`,
  'washers-overlap': ({ first, second }: { first: string; second: string }) =>
    `End float: the washers “${first}” and “${second}” are both given for the same float. Correct where one begins.`,
  'washers-half-tabled': ({ washer }: { washer: string }) =>
    `End float: the washer “${washer}” has no float from and to, and others or its other end have. Give both for all of them, or for ` +
    'none: then they are chosen by their thickness.',
  'washers-mixed-tabled': (_: Record<never, never>) =>
    'End float: the washers may differ from each other, but the table gives both alike. Leave out “mixed”, or the table.',
  'washer-thickness-twice': (facts: { first: string; second: string; thickness: AmountText }) =>
    `End float: the washers “${facts.first}” and “${facts.second}” are both ${facts.thickness} thick. Correct one, or keep one.`,
  'washer-steps-wide': (facts: { step: AmountText; range: AmountText }) =>
    `End float: from one pair of washers to the next thicker it changes by ${facts.step}, and its limits are only ${facts.range} apart: ` +
    'for some cranks no pair fits. Look whether a thickness is missing, or the washers may differ (“mixed”).',
  'limits-said-twice': (facts: {
    step: string
    gap: keyof typeof gaps
    here: AmountText
    there: AmountText
  }) =>
    `${facts.step}: the step allows ${facts.here}, and the ${gaps[facts.gap]} of this engine is given as ${facts.there}. ` +
    'Two limits for one thing: find out which holds.',

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
    `${fit}: its halves are left and right, but ${families[family]}. Correct “split” or “family”.`,
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

  // Positions
  'saddles-out-of-order': ({ first, second }: { first: string; second: string }) =>
    `Saddle ${second} is listed after ${first} and does not lie behind it. List the saddles from the nose on.`,
  'bearings-overlap': ({ first, second, by }: { first: string; second: string; by: AmountText }) =>
    `${first} and ${second} overlap by ${by} along the crank. Correct where they lie, or their widths.`,
  'bores-overlap': ({ bore, pitch }: { bore: AmountText; pitch: AmountText }) =>
    `Bores of ${bore} at a pitch of ${pitch} run into each other. Correct one of the two.`,
  'rod-without-cylinder': ({
    rod,
    cylinder,
    cylinders,
  }: {
    rod: string
    cylinder: number
    cylinders: number
  }) =>
    `Rod ${rod} belongs to cylinder ${cylinder}, and the engine has ${cylinders}. Correct one of the two.`,
  'cylinder-with-two-rods': ({ cylinder }: { cylinder: number }) =>
    `Cylinder ${cylinder} has two rods. Correct the cylinder of one of them.`,
  'rods-missing': ({ rods, cylinders }: { rods: number; cylinders: number }) =>
    `There are ${rods} rods for ${cylinders} cylinders. Add those that are missing.`,
  'outside-outline': ({ what, face, x, y }: OfPlace) =>
    `${capital(what)} at ${x}, ${y} lies outside the outline of ${face}. Correct the place, or the outline.`,
  'far-outside': ({ what, face, x, y }: OfPlace) =>
    `${capital(what)} at ${x}, ${y} lies far from everything else on ${face}. Check the place and its unit.`,
  'parts-collide': ({ first, second, face }: { first: PhraseText; second: PhraseText; face: string }) =>
    `${face}: ${first} and ${second} overlap. Correct the place of one of them.`,
  'outline-crosses-itself': ({ face }: { face: string }) =>
    `The outline of ${face} crosses itself. Give its corners in order, once around.`,
  'shank-not-waisted': ({ group, shank, thread }: { group: string; shank: AmountText; thread: AmountText }) =>
    `${group}: a shank of ${shank} on a thread of ${thread} is not waisted, or too thin for a bolt. Correct it, or leave it out where ` +
    'the shank is as thick as the thread.',
  'prevailing-missing': ({ group }: { group: string }) =>
    `${group}: whether the torque includes the prevailing torque is said, and there is no prevailing torque. Give the most that it ` +
    'takes to run down, or leave both out.',
  'prevailing-not-said': ({ group, torque }: { group: string; torque: AmountText }) =>
    `${group}: up to ${torque} run it down, and nothing says whether its torque includes that. Look it up and set ` +
    '“torqueIncludesPrevailing”; until then nothing is added to the torque.',
  'layers-not-grip': ({ group, layers, grip }: { group: string; layers: AmountText; grip: AmountText }) =>
    `${group}: the layers are ${layers} together, and the grip is ${grip}. Correct one of the two.`,
  'head-smaller-than-thread': ({
    group,
    acrossFlats,
    thread,
  }: {
    group: string
    acrossFlats: AmountText
    thread: AmountText
  }) =>
    `${group}: ${acrossFlats} across flats is no wider than the thread, ${thread}. Correct one of the two.`,

  // Beads
  'bead-in-keep-out': ({ bead, zone }: OfBead & { zone: string }) =>
    `${bead} runs into the keep-out zone “${zone}”. Lead the path around it.`,
  'bead-over-oil-passage': ({ bead, passage }: OfBead & { passage: string }) =>
    `${bead} runs over “${passage}” and would close it. Lead the path around it.`,
  'bead-over-hole': ({ bead, what }: OfBead & { what: PhraseText }) =>
    `${bead} runs over the hole of ${what}. Lead the path past it.`,
  'bead-outside-outline': ({ bead, face }: OfBead & { face: string }) =>
    `${bead} leaves the outline of ${face}. Correct the path, or the outline.`,

  // Steps
  'steps-in-a-ring': ({ steps }: { steps: readonly string[] }) =>
    `The steps ${steps.map((step) => `“${step}”`).join(', ')} wait for each other, so that none can begin. ` +
    'Take one out of what another comes after.',
  'procedure-never-run': ({ procedure }: OfProcedure) =>
    `${procedure}: no step carries this procedure out. Add a step, or remove the procedure.`,
  'bead-never-laid': ({ bead }: OfBead) => `${bead}: no step lays it. Add a step, or remove the bead.`,
  'fit-without-step': ({ fit, missing }: OfFit & { missing: keyof typeof shellSteps }) =>
    `${fit}: no step to ${shellSteps[missing]}. Add it, or the shells will be forgotten.`,
  'done-in-two-steps': ({ work, first, second }: { work: Work; first: string; second: string }) =>
    `${workIn(work)} is done both in “${first}” and in “${second}”. A build does it once: remove one step.`,
  'step-does-not-wait': ({ step, other }: { step: string; other: string }) =>
    `“${step}” can begin before “${other}” is done. Let it come after that.`,

  // Parts
  'part-count-differs': ({ part, count, used }: { part: string; count: number; used: number }) =>
    `“${part}”: ${count} on the list, and its steps use ${used}. Correct one of the two.`,
  'part-twice-in-step': ({ part, step }: { part: string; step: string }) =>
    `“${part}” stands twice for “${step}”. Write its count there once.`,
  'part-where-nothing-is-fitted': ({ part, step }: { part: string; step: string }) =>
    `“${part}” is used in “${step}”, and nothing is fitted there. Name a step that fits something.`,
  'count-without-parts': ({ step }: { step: string }) =>
    `“${step}” counts what is left over, and there is no parts list. Add one, or remove the step.`,
  'parts-never-counted': (_: Record<never, never>) =>
    'There is a parts list, and no step counts what is left over. Add one at the end.',

  // What is measured against limits
  'service-limits-narrower': ({ name }: { name: string }) =>
    `${name}: the limits of a used part are narrower than those of a new one. Correct one of the two.`,
  'measured-place-twice': ({ name, place }: { name: string; place: string }) =>
    `${name}: “${place}” is there twice. Give each place a name of its own.`,
  'measure-twice': ({ name, id }: { name: string; id: string }) =>
    `${name}: “${id}” stands twice in one step. Give each measure its own id.`,
  'ring-gap-may-close': ({ name }: { name: string }) =>
    `${name}: there is no least gap above zero. The ends of a ring must never touch: write the least that the manual gives.`,
  'ring-gap-unusual': (facts: { name: string; bore: AmountText; least: AmountText; most: AmountText }) =>
    `${facts.name}: in a bore of ${facts.bore} a ring gap lies between ${facts.least} and ${facts.most}. Check the limits and their unit.`,

  // Cautions and source
  'standing-caution-missing': (_: Record<never, never>) =>
    "No caution says that the maker's current manual and a qualified person overrule this program. Add one for all steps.",
  'source-unchecked': ({ enteredBy }: { enteredBy: string }) =>
    `The numbers were entered by ${enteredBy} and checked by nobody. Let a second person compare them with their source.`,
  'source-checked-by-same': ({ enteredBy }: { enteredBy: string }) =>
    `${enteredBy} both entered and checked the numbers. Let a second person compare them with their source.`,
}

export interface Clearance {
  readonly clearance: AmountText
  readonly limits: AmountText
}

function workIn(work: Work): string {
  switch (work.kind) {
    case 'note-marks':
      return `Noting the ${work.part} marks of fit “${work.fit}”`
    case 'choose-shells':
      return `Choosing the shells of fit “${work.fit}”`
    case 'fit-shells':
      return `Fitting the shells of fit “${work.fit}”`
    case 'lay-bead':
      return `Bead “${work.bead}”`
    case 'run-procedure':
      return `Procedure “${work.procedure}”`
  }
}

function cell({ fit, housing, journal }: OfMarks): string {
  return `${fit}, marks ${housing} and ${journal}`
}
