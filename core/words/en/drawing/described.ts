import { counted } from '../formats.ts'
import { engineParts } from '../engine-parts.ts'
import { patterns } from '../window/parts.ts'

export interface Measured {
  readonly least: string
  /** Null where all readings are alike. */
  readonly most: string | null
}

const sizes = ({ least, most }: Measured) => (most === null ? least : `${least} to ${most}`)

/** The card of a thing on the drawing: what it is, what is asked of it, and what became of it. Sizes come with their unit. */
export const described = {
  // A bearing and its shells
  half: (facts: {
    readonly bearing: keyof typeof engineParts.bearings
    readonly position: string
    readonly half: keyof typeof engineParts.halves
  }) => `${engineParts.bearings[facts.bearing]} ${facts.position}, ${engineParts.halves[facts.half]} half`,
  notChosen: 'Shell not chosen yet',
  shell: (facts: {
    readonly isChosen: boolean
    readonly grade: string
    /** The name of the undersize; null for the standard size. */
    readonly undersize: string | null
    /** Null where the spec has no such grade. */
    readonly pattern: keyof typeof patterns | null
  }) =>
    `${facts.isChosen ? 'Grade' : 'Proposed: grade'} ${facts.grade}${facts.undersize === null ? '' : `, ${facts.undersize}`}, ` +
    `pattern ${facts.pattern === null ? 'not known' : patterns[facts.pattern]}`,
  toBeOrdered: 'To be ordered',
  fromTray: ({ label }: { readonly label: string }) => `From the tray: ${label}`,
  clearanceAllowed: ({ limits }: { readonly limits: string }) => `Oil clearance: ${limits} allowed`,
  clearance: (facts: { readonly clearance: string; readonly verdict: string; readonly limits: string }) =>
    `Oil clearance ${facts.clearance}, ${facts.verdict}; ${facts.limits} allowed`,
  judged: ({ verdict, limits }: { readonly verdict: string; readonly limits: string }) =>
    `${verdict}, ${limits} allowed`,
  countsAs: ({ size, reason }: { readonly size: string | null; readonly reason: string }) =>
    `It counts as ${size ?? engineParts.standardSize}: ${reason}`,
  decided: ({ by, reason }: { readonly by: 'marks' | 'readings'; readonly reason: string }) =>
    `The ${by} count: ${reason}`,
  marks: ({ housing, journal }: { readonly housing: string | null; readonly journal: string | null }) =>
    `Marks: housing ${housing ?? 'not noted'}, journal ${journal ?? 'not noted'}`,
  boreMeasured: (measured: Measured) => `Bore measured: ${sizes(measured)}`,
  journalMeasured: (measured: Measured) => `Journal measured: ${sizes(measured)}`,
  notInPlace: 'Not in place',
  toBeFitted: 'To be fitted',
  inPlace: 'In place',
  fit: ({ grade }: { readonly grade: string }) => `fit ${grade}`,
  /** What a person has to look at before a bearing is closed. */
  bearingFlags: {
    'sizes-differ': 'declared size and reading differ',
    'mark-differs': 'mark and readings differ',
    'out-of-shape': 'out of shape',
  },

  // A main journal
  journal: ({ position }: { readonly position: string }) => `Main journal ${position}`,
  mark: ({ mark }: { readonly mark: string | null }) => `Mark ${mark ?? 'not noted'}`,
  groundTo: ({ undersize }: { readonly undersize: string }) => `Ground to ${undersize}`,
  measured: (measured: Measured) => `Measured: ${sizes(measured)}`,

  // A fastener
  fastener: ({ number, where }: { readonly number: string; readonly where: string }) =>
    `Fastener ${number}, ${where}`,
  ofProcedure: ({ procedure }: { readonly procedure: string }) => `${procedure}:`,
  group: (facts: {
    readonly group: string
    readonly thread: string
    readonly grip: string
    readonly hasWasher: boolean
  }) => `${facts.group}: ${facts.thread}, ${facts.grip} clamped${facts.hasWasher ? ', on its washer' : ''}`,
  reusable: 'May be used again',
  onceOnly: 'New each time: may be used once only',
  declaredNew: 'New each time: declared new',
  pass: ({
    pass,
    kind,
    limits,
  }: {
    readonly pass: number
    readonly kind: string
    readonly limits: string | null
  }) => `Pass ${pass}, ${kind}${limits === null ? '' : `: ${limits}`}`,
  passDone: (facts: {
    readonly pass: string
    /** What was read; null where there is nothing to read. */
    readonly read: string | null
    readonly verdict: 'under' | 'over' | 'moved' | null
    /** Why it was pulled before its turn. */
    readonly beforeTurn: string | null
  }) =>
    [
      facts.pass,
      facts.read === null ? 'done' : `read ${facts.read}`,
      ...(facts.verdict === null
        ? []
        : [{ under: 'too little', over: 'too much', moved: 'it moved' }[facts.verdict]]),
      ...(facts.beforeTurn === null ? [] : [`before its turn: ${facts.beforeTurn}`]),
    ].join(' · '),
  answered: ({ flag, answer }: { readonly flag: string; readonly answer: string }) =>
    `${flag} · answered: ${answer}`,

  // The crank, and parts in a face
  pin: ({ rods }: { readonly rods: readonly string[] }) => `Crankpin of ${rods.join(' and ')}`,
  pinAngle: ({ angle }: { readonly angle: string }) =>
    `It stands at ${angle} as the crank is laid: 0° is up, towards who looks from above`,
  throwRadius: ({ radius }: { readonly radius: string }) => `${radius} from the axis of the crank`,
  wheelSize: ({ diameter, width }: { readonly diameter: string; readonly width: string }) =>
    `${diameter} across, ${width} wide`,
  partSize: ({ diameter }: { readonly diameter: string }) => `${diameter} across`,
  stands: ({ depth }: { readonly depth: string | null }) =>
    depth === null ? 'Flush with the face' : `${depth} below the face`,
  lips: { inwards: 'Lip towards the oil inside', outwards: 'Lip outwards' },
  flows: { inwards: 'Oil flows into the face', outwards: 'Oil flows out of the face' },
  sealedEnds: 'Sealant on the ends of both halves',
  gasketWidth: ({ width }: { readonly width: string }) => `${width} wide along the edge`,
  newEachTime: 'New each time',

  // Other places
  thrust: ({ saddle }: { readonly saddle: string }) => `Thrust washers at saddle ${saddle}`,
  endFloat: (limits: { readonly least: string; readonly most: string }) =>
    `End float of the crank: ${limits.least} to ${limits.most}`,
  dowel: 'Dowel',
  dowelSize: ({ diameter, face }: { readonly diameter: string; readonly face: string }) =>
    `${diameter} across, ${face}`,
  passage: ({ name }: { readonly name: string }) => `Oil passage: ${name}`,
  passageSize: ({ along, across }: { readonly along: string; readonly across: string }) =>
    `${along} along, ${across} across`,
  passageFree: 'Sealant must stay out of it',
  sealant: ({ sealant, width }: { readonly sealant: string; readonly width: string }) =>
    `Sealant: ${sealant}, ${width} wide`,
  openTime: ({ minutes }: { readonly minutes: number }) =>
    `Close the joint within ${minutes} minutes of laying it`,
  keepsOut: ({ name }: { readonly name: string }) => `Keeps out of: ${name}`,
  notLaid: 'Not laid yet',
  laid: 'Laid',
  noSealant: ({ bead }: { readonly bead: string }) => `No sealant here: “${bead}” passes beside it`,
  bore: ({ number }: { readonly number: number }) => `Bore ${number}`,
  boreSize: ({ diameter }: { readonly diameter: string }) => `${diameter}, behind this face`,
  ofRods: ({ rods }: { readonly rods: readonly string[] }) => `Its rod’s big end: ${rods.join(', ')}`,
  onFace: (facts: { readonly fasteners: number; readonly dowels: number; readonly beads: number }) =>
    [
      counted(facts.fasteners, 'fastener', 'fasteners'),
      counted(facts.dowels, 'dowel', 'dowels'),
      counted(facts.beads, 'bead', 'beads'),
    ].join(', '),
  workedFrom: ({ from }: { readonly from: 'above' | 'below' }) => `Worked on from ${from}`,
  check: (facts: {
    readonly name: string
    readonly isGood: boolean
    readonly read: string | null
    readonly note: string
  }) =>
    `${facts.name}: ` +
    [
      facts.isGood ? 'good' : 'not good',
      ...(facts.read === null ? [] : [`read ${facts.read}`]),
      ...(facts.note === '' ? [] : [facts.note]),
    ].join(', '),
  opening: 'Opening',
  openThrough: 'Open through this face: nothing seals or clamps here',
  nose: 'Nose',
  ofNose: 'The front end of the crank: everything is counted from here',
  drive: 'Drive end',
  ofDrive: 'The end of the crank that drives, opposite the nose',

  // Notes beside the drawing, and the callout at what is next
  gap: ({ reading, limits }: { readonly reading: string; readonly limits: string }) =>
    `gap ${reading}, ${limits}`,
  checkNote: ({ name, said: texts }: { readonly name: string; readonly said: readonly string[] }) =>
    `${name}: ${texts.length === 0 ? 'not good' : texts.join(', ')}`,
  byHand: 'by hand',
  /** A nut that does not run free, until it touches. */
  runDown: 'run it down',
  loosen: 'loosen',
  measure: 'measure',
  /** Until it is long enough. */
  tighten: 'tighten',
}
