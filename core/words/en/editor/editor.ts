import { counted, day } from '../formats.ts'
import { drawn } from './drawn.ts'
import { editorCheck } from './editor-check.ts'
import { editorFields } from './editor-fields.ts'
import { editorMore } from './editor-more.ts'
import { editorPicture } from './editor-picture.ts'
import { editorSteps } from './editor-steps.ts'

export interface OfThings {
  readonly count: number
}

const things = ({ count }: OfThings) => counted(count, 'thing', 'things')

/** The page on which a spec is written: its drawing, its forms, what the audit says beside them. */
export const editor = {
  fields: editorFields,
  more: editorMore,
  drawn,
  steps: editorSteps,
  check: editorCheck,
  picture: editorPicture,
  pages: {
    page: 'Page of the manual',
    document: 'Document, where it is another one',
    thatOfTheSpec: 'the manual of the spec',
    enteredBy: ({ by, on }: { readonly by: string; readonly on: string }) => `Entered by ${by} on ${day(on)}`,
  },
  title: ({ name, revision }: { readonly name: string; readonly revision: string }) =>
    `${name}, revision ${revision}`,
  nothingToUndo: 'Undo',
  nothingToRedo: 'Do again',

  face: 'Face',
  actions: {
    place: 'Place',
    move: 'Move',
    align: 'Align',
    mirror: 'Mirror',
    repeat: 'Repeat',
    order: 'Order',
    group: 'Group',
    position: 'Position',
    remove: 'Take out',
    picture: 'Picture',
  },
  whatToDo: 'What to do on the drawing',
  selected: (facts: OfThings) => (facts.count === 0 ? 'Nothing is chosen.' : `${things(facts)} chosen`),
  fieldPicture: 'What the field measures',
  chooseByTap: 'Tap what is to be worked on; tap it again to leave it out. Drag it to move it.',
  clear: 'Choose nothing',
  place: {
    what: 'What is placed',
    kinds: { fastener: 'Fastener', dowel: 'Dowel', 'oil-passage': 'Oil way' },
    group: 'Group',
    tap: 'Tap where it goes. It is drawn to saddles, to the axis and to what is already there.',
    noGroup: 'There is no fastener group yet: add one under “Groups” first.',
    oilWay: 'oil way',
    where: ({ saddle, side }: { readonly saddle: string; readonly side: string }) =>
      side === '' ? `at ${saddle}` : `at ${saddle}, ${side}`,
    onFace: ({ side }: { readonly side: string }) => (side === '' ? 'on the axis' : side),
    diameter: 'Diameter',
    sizeAlong: 'Size along',
    sizeAcross: 'Size across',
    size: 'Take the size that the manual gives: none is made up. A size that is left empty is that of the last one on this face.',
    put: 'Place it there',
  },
  paste: {
    title: 'Places from a table',
    columns: 'x, y and, where there are, number and group: from a spreadsheet or a CSV file',
    unit: 'Numbers without a unit are in',
    fromFile: 'From a CSV file',
  },
  move: {
    step: 'Step',
    keys: 'The arrow keys move by this step.',
    directions: { left: 'To the left', up: 'Up', down: 'Down', right: 'To the right' },
  },
  align: {
    row: 'In a row with the first chosen',
    column: 'In a column with the first chosen',
    spread: 'Spread evenly between the outer two',
    needs: ({ count }: OfThings) => `Choose at least ${count}.`,
  },
  mirror: {
    explained: 'A copy of each comes to the other side of the axis, with a number of its own.',
    go: 'Mirror across the axis',
  },
  repeat: {
    count: 'How many in all',
    along: 'Pitch along the crank',
    across: 'Pitch across it',
    go: 'Repeat in a row',
    centreAlong: 'Centre, along',
    centreAcross: 'Centre, across',
    circle: 'Repeat on a circle',
  },
  position: {
    along: 'Along, from the nose',
    across: 'Across, from the axis',
    one: 'Choose one thing to type its place, or two to see how far apart they are.',
    apart: ({
      along,
      across,
      straight,
    }: {
      readonly along: string
      readonly across: string
      readonly straight: string
    }) => `Along ${along}, across ${across}, straight ${straight}.`,
    where: 'Its place in words',
    number: 'Number on the drawing',
  },
  remove: {
    go: 'Take out what is chosen',
    losesOrder: ({
      order,
      procedure,
      count,
    }: {
      readonly order: string
      readonly procedure: string
      readonly count: number
    }) => `The order ${order} of ${procedure} loses ${counted(count, 'fastener', 'fasteners')}.`,
    losesPass: ({ procedure, pass }: { readonly procedure: string; readonly pass: number }) =>
      `Pass ${pass} of ${procedure} names them.`,
  },
  order: {
    which: 'Order',
    name: 'Name of the order',
    called: ({ number }: { readonly number: number }) => `Order ${number}`,
    none: 'No procedure tightens this face yet.',
    addProcedure: 'Add a tightening procedure',
    proposal:
      'The order goes from the middle outwards and the first pass is by hand, without a value: both are proposals until the manual’s order is tapped and its passes are typed.',
    procedureName: ({ face }: { readonly face: string }) => `Tighten: ${face}`,
    tap: 'Tap the fasteners in the manual’s order. The last one tapped again is taken back.',
    begin: 'Begin again with the next tap',
    begun: 'The next tap is number 1.',
    soFar: ({ done, of }: { readonly done: number; readonly of: number }) => `${done} of ${of} in the order`,
    pattern: ({ count }: { readonly count: number }) =>
      `Or grow it over ${counted(count, 'fastener', 'fasteners')} by a pattern`,
    mend: 'Mend',
    fastener: 'Fastener',
    toPlace: 'to place',
    moveIt: 'Move it there',
    swap: 'Change it with the one there',
    inPlace: ({ place, number }: { readonly place: number; readonly number: string }) =>
      `${place}: fastener ${number}`,
  },
  group: {
    which: 'Group to paint with',
    tap: 'Tap the fasteners that belong to it.',
  },

  sections: {
    drawing: 'Drawing',
    case: 'Case',
    faces: 'Faces',
    groups: 'Groups',
    passes: 'Passes',
    fits: 'Bearings',
    steps: 'Steps',
    parts: 'Parts',
    rest: 'The rest',
    audit: 'Audit',
    check: 'Check',
  },
  sectionWithFindings: ({ section, count }: { readonly section: string; readonly count: number }) =>
    count === 0 ? section : `${section} (${count})`,
  forms: 'Forms',
  audit: {
    none: 'The audit finds nothing.',
    faults: ({ count }: OfThings) => counted(count, 'fault', 'faults'),
    doubts: ({ count }: OfThings) => counted(count, 'doubt', 'doubts'),
    weights: { fault: 'Fault', doubt: 'Doubt' },
    show: 'Show',
    accept: 'Accept, because …',
    why: 'Why it is right as it is',
    acceptIt: 'Accept it so',
    leave: 'Leave it open',
    accepted: ({ count }: OfThings) => `Accepted: ${counted(count, 'doubt', 'doubts')}`,
    because: ({ by, on, reason }: { readonly by: string; readonly on: string; readonly reason: string }) =>
      `Accepted by ${by} on ${day(on)}, because: ${reason}`,
    openAgain: 'Doubt it again',
  },
  passes: {
    none: 'There is no procedure yet. Choose “Order” above the drawing, then “Add a tightening procedure”.',
    procedure: 'Procedure',
    caption: 'Passes as the manual lists them',
    table: 'Overview of the passes',
    columns: { number: 'No.', kind: 'Kind', value: 'Value', order: 'Order' },
    valueExample: '30 ± 3 lbf·ft',
    inAll: 'in all',
    add: 'Add a pass',
    up: ({ pass }: { readonly pass: number }) => `Move pass ${pass} up`,
    takeOut: ({ pass }: { readonly pass: number }) => `Take out pass ${pass}`,
    field: ({ pass, field }: { readonly pass: number; readonly field: string }) => `Pass ${pass}: ${field}`,
    grownOrder: ({ order }: { readonly order: string }) =>
      `The order “${order}” was grown by a pattern and is none of the manual yet: compare it, or tap the manual’s order.`,
    new: 'New pass',
    becomes: ({ pass, kind }: { readonly pass: number; readonly kind: string }) =>
      `Pass ${pass} becomes: ${kind}`,
    change: 'Change it',
    leave: 'Leave it as it is',
    needs: {
      value: 'Value, with limits where they are given',
      least: 'Longer by, from',
      most: 'Longer by, to',
      torqueLeast: 'Torque from',
      torqueMost: 'Torque to',
      instruction: 'What is done',
    },
  },
  groups: {
    caption: 'Fastener groups: all that are one part',
    add: 'Add a group',
    new: 'New group',
    used: ({ count }: OfThings) => counted(count, 'fastener', 'fasteners'),
    usual:
      'A new group has hexagon heads, goes into tapped holes and has no washers until it is said otherwise.',
    threadMeans: (facts: {
      readonly diameter: string
      /** Null for an inch thread. */
      readonly pitch: string | null
      readonly toTheInch: number
    }) =>
      facts.pitch === null
        ? `diameter ${facts.diameter}, ${facts.toTheInch} threads to the inch`
        : `diameter ${facts.diameter}, pitch ${facts.pitch}`,
    more: 'More, where the manual gives it',
    shank: 'Waisted shank, diameter',
    frictionClass: 'Friction class (VDI 2230)',
    includesPrevailing: 'Torques have the prevailing torque in them',
    pastMost: 'Past the most of a pass',
    pastMosts: { replace: 'it is replaced', 'begin-again': 'it begins again' },
  },
  fits: {
    which: 'Bearings',
    none: 'This spec has no bearings that are chosen by marks.',
    mark: 'Mark',
    band: 'Size, from and up to',
    bandOf: ({ of }: { readonly of: string }) => `Size of ${of}`,
    grades: 'Shells',
    grade: 'Grade',
    wall: 'Wall, from and up to',
    chart: 'Chart',
    cell: ({ housing, journal }: { readonly housing: string; readonly journal: string }) =>
      `Shells for housing mark ${housing} and journal mark ${journal}`,
    bandsGive: ({ upper, lower }: { readonly upper: string; readonly lower: string }) =>
      `the sizes give ${upper === lower ? upper : `${upper}/${lower}`}`,
    disagree: ({ count }: { readonly count: number }) =>
      `${counted(count, 'cell leaves', 'cells leave')} the limits, or the sizes give other shells.`,
    grow: 'Grow it from the sizes',
    paste: 'Paste a chart',
    pasteHere: 'The chart with its marks, from a spreadsheet or a CSV file',
    takeIn: 'Take it in',
    noChart: 'Leave the chart out',
    unknown: ({ count }: { readonly count: number }) =>
      `For ${counted(count, 'pair of marks', 'pairs of marks')} a size is missing: nothing can be grown there.`,
  },
  asPrinted:
    'Type each value as the manual prints it, in both units where it prints both: 30 lbf·ft (41 N·m). Two that do not agree within their last digits are not taken.',
  lists: {
    takeOut: ({ name }: { readonly name: string }) => `Take out ${name}`,
  },
}
