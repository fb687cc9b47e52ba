import type { AmountText } from '../../amount.ts'
import type { PhraseText } from '../../phrase.ts'
import { capital } from '../../formats/index.ts'
import type { OfProcedure } from './audit-tightening.ts'

export interface OfFit {
  readonly fit: string
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
    'End float: the washers may differ from each other, but the table gives both alike. Say that they never differ, or leave the table out.',
  'washer-misses-limits': (facts: {
    washer: string
    standard: string
    floats: AmountText
    leaves: AmountText
    limits: AmountText
  }) =>
    `End float: at ${facts.floats} the washers “${facts.washer}” are to go in. By their thickness they leave ${facts.leaves}, where “` +
    `${facts.standard}” were in before; allowed is ${facts.limits}. Check the thickness, and the floats of the row.`,
  'washer-thickness-twice': (facts: { first: string; second: string; thickness: AmountText }) =>
    `End float: the washers “${facts.first}” and “${facts.second}” are both ${facts.thickness} thick. Correct one, or keep one.`,
  'washer-steps-wide': (facts: { step: AmountText; range: AmountText }) =>
    `End float: from one pair of washers to the next thicker it changes by ${facts.step}, and its limits are only ${facts.range} apart: ` +
    'for some cranks no pair fits. Look whether a thickness is missing, or whether the two washers may differ.',
  'limits-said-twice': (facts: {
    step: string
    gap: keyof typeof gaps
    here: AmountText
    there: AmountText
  }) =>
    `${facts.step}: the step allows ${facts.here}, and the ${gaps[facts.gap]} of this engine is given as ${facts.there}. ` +
    'Two limits for one thing: find out which holds.',

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
    `${group}: up to ${torque} run it down, and nothing says whether its torque includes that. Look it up and say it; ` +
    'until then nothing is added to the torque.',
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

  // The crank as it is drawn
  'rod-without-throw': ({ rod }: { rod: string }) =>
    `Crank: rod ${rod} runs on no throw. Name it at the throw that carries it.`,
  'rod-on-two-throws': ({ rod, first, second }: { rod: string; first: string; second: string }) =>
    `Crank: rod ${rod} is named at throw ${first} and again at throw ${second}. A rod runs on one pin: remove one.`,
  'saddle-within-throw': ({ throw: named, saddle }: { throw: string; saddle: string }) =>
    `Crank: the rods of throw ${named} lie on both sides of saddle ${saddle}, and no pin goes through a saddle. Correct the rods of the throw.`,
  'counterweight-twice': ({ throw: named, side }: { throw: string; side: 'nose' | 'drive' }) =>
    `Crank: the web of throw ${named} towards the ${side === 'nose' ? 'nose' : 'drive end'} has two counterweights. Remove one.`,
  'wheel-over-bearing': ({ wheel, bearing }: { wheel: string; bearing: string }) =>
    `Crank: the wheel “${wheel}” lies over ${bearing}. Correct where it is, or its width.`,
  'crank-not-described': ({ step }: { step: string }) =>
    `“${step}” shows the crank, and this spec has none. Describe the crank, or do not let the step show it.`,
  'crank-not-on-face': ({ step, face }: { step: string; face: string }) =>
    `“${step}” shows the crank, which cannot be seen at ${face}. Name the face with the saddles, or one across an end of the case.`,

  // Parts in a face
  'seal-too-small': ({ seal, shaft, diameter }: { seal: string; shaft: AmountText; diameter: AmountText }) =>
    `${seal}: its shaft of ${shaft} is no thinner than the seal, ${diameter}. Correct one of the two.`,
  'gasket-not-listed': ({ face }: { face: string }) =>
    `${face}: its gasket is not among the parts, so nobody ticks it. Add it to them, and say at the gasket which part it is.`,
  'gasket-used-again': ({ face, part }: { face: string; part: string }) =>
    `${face}: the gasket “${part}” may be used again. A gasket is usually new each time: look it up.`,
  'gasket-laid-elsewhere': ({ face, part }: { face: string; part: string }) =>
    `${face}: no step at this face fits the gasket “${part}”. Say at the part in which step it goes in, and at that step which face it shows.`,

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
  'skippable-step-needed': ({ step, other }: { step: string; other: string }) =>
    `“${step}” may be skipped, and “${other}” needs it. Do not let it be skipped, or let “${other}” do without it.`,
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
  'place-twice': ({ step, place }: { readonly step: string; readonly place: string }) =>
    `“${step}” has two places that are called “${place}” or share an id. Give each its own.`,
  'measured-place-twice': ({ name, place }: { name: string; place: string }) =>
    `${name}: “${place}” is there twice. Give each place a name of its own.`,
  'measure-twice': ({ name, id }: { name: string; id: string }) =>
    `${name}: “${id}” stands twice in one step. Give each measure its own id.`,
  'ring-gap-may-close': ({ name }: { name: string }) =>
    `${name}: there is no least gap above zero. The ends of a ring must never touch: write the least that the manual gives.`,
  'ring-gap-unusual': (facts: { name: string; bore: AmountText; least: AmountText; most: AmountText }) =>
    `${facts.name}: in a bore of ${facts.bore} a ring gap lies between ${facts.least} and ${facts.most}. Check the limits and their unit.`,

  // Cautions and source
  'fasteners-none': (_: Record<never, never>) =>
    'No fastener is described, so that nothing would be tightened. Enter those that hold the parts together, from the manual.',
  'bearings-without-fit': ({ bearing, ids }: { bearing: 'main' | 'big-end'; ids: readonly string[] }) =>
    `${bearing === 'main' ? 'Main bearings' : 'Big ends'} ${ids.join(', ')}: no fit says which shells go in, and nothing asks for them. Add a fit, or look up whether they have none.`,
  'saddles-none': (_: Record<never, never>) =>
    'A crank runs in this case, and it has no saddle. Place the main bearings where the manual has them, or let no face show saddles or rods.',
  'end-float-missing': ({ saddle }: { saddle: string }) =>
    `${saddle} has the thrust washers, and no end float is given. Enter its limits from the manual.`,
  'standing-caution-missing': (_: Record<never, never>) =>
    "No caution says that the maker's current manual and a qualified person overrule this program. Add one for all steps.",
  'source-unchecked': ({ enteredBy }: { enteredBy: string }) =>
    `The numbers were entered by ${enteredBy} and checked by nobody. Let a second person compare them with their source.`,
  'value-reads-otherwise': ({ place, by, found }: At & { by: string; found: string }) =>
    `${capital(place)}: ${by} compared it with the manual and reads “${found}” there. Find out which is right: correct the value, or have it compared again.`,
  'source-copied-from-demo': ({ demo }: { demo: string }) =>
    `This spec was begun as a copy of the demo “${demo}”, whose numbers are invented. Compare every value with the manual, then say so under “Check” of the editor; in a file, take “copiedFromDemo” out of its source.`,
  'source-checked-by-same': ({ enteredBy }: { enteredBy: string }) =>
    `${enteredBy} both entered and checked the numbers. Let a second person compare them with their source.`,
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
