import { counted } from '../formats.ts'

/** The page with the specs of the shop: what there is, who checked it, what is being written. */
export const library = {
  title: 'Library',
  purpose: 'The engine specs of this shop, and those that come with the program.',
  search: {
    typed: 'Search',
    typedExample: 'name, family, who checked it',
    family: 'Family',
    anyFamily: 'any family',
    nothingFound: 'No engine is like that. Take a word away, or begin a new engine.',
    found: ({ engines }: { readonly engines: number }) => counted(engines, 'engine', 'engines'),
  },
  engines: 'Engines',
  columns: {
    engine: 'Engine',
    family: 'Family',
    revision: 'Revision',
    checked: 'Entered and checked',
    builds: 'Builds begun with it',
  },
  demo: 'demo, comes with the program',
  cylinders: ({ cylinders }: { readonly cylinders: number }) => counted(cylinders, 'cylinder', 'cylinders'),
  enteredBy: ({ by }: { readonly by: string }) => `entered by ${by}`,
  checkedBy: ({ by }: { readonly by: string }) => `checked by ${by}`,
  unchecked: 'not checked by a second person',
  usedBy: ({ builds }: { readonly builds: number }) =>
    builds === 0 ? 'none' : counted(builds, 'build', 'builds'),
  copy: 'Copy for a new engine',
  revise: 'Begin a new revision',
  save: 'Save as a file',
  revisions: 'Revisions',
  revision: ({ revision, name }: { readonly revision: number; readonly name: string }) =>
    name === String(revision) ? `Revision ${revision}` : `Revision ${revision}, “${name}”`,
  published: ({ by, on }: { readonly by: string; readonly on: string }) => `published by ${by}, ${on}`,
  differences: {
    title: ({ older, newer }: { readonly older: number; readonly newer: number }) =>
      `From revision ${older} to ${newer}`,
    none: 'No value differs.',
    place: 'Where',
    before: 'Before',
    after: 'After',
    notThere: 'not there',
    more: ({ more }: { readonly more: number }) => `and ${counted(more, 'difference', 'differences')} more`,
    buildsKeep: 'A build keeps the revision that it was begun with.',
  },
  begin: {
    title: 'New engine',
    ofFamily: 'From a family',
    ofCopy: ({ name }: { readonly name: string }) => `Copy of ${name}`,
    ofRevision: ({ name, revision }: { readonly name: string; readonly revision: number }) =>
      `Revision ${revision} of ${name}`,
    explained:
      'A bare case with its saddles is drawn from a few measures. Nothing else is made up: the audit then says what is missing.',
    copyExplained: 'Everything is copied. Then replace each value by that of the manual.',
    demoExplained: 'The numbers of a demo are invented. Replace every one of them by that of the manual.',
    revisionExplained:
      'Builds that have begun keep their revision. New ones begin with this one once it is published.',
    name: 'Name of the engine',
    nameExample: 'as people call it here',
    from: 'Manual that the numbers come from',
    fromExample: 'title, edition, pages',
    cylinders: 'Cylinders',
    bankAngle: 'Angle between the banks',
    bore: 'Cylinder bore',
    pitch: 'Between two bores of a bank',
    mains: 'Main bearings',
    mainDiameter: 'Housing bore of the mains',
    mainWidth: 'Width of a saddle',
    thrustMain: 'Main with the thrust washers',
    noThrust: 'not said',
    hasRods: 'With connecting rods',
    rodDiameter: 'Housing bore of the big ends',
    rodWidth: 'Width of a big end',
    go: 'Begin',
    cancel: 'Cancel',
  },
  drafts: {
    title: 'Being written',
    none: 'Nothing is being written.',
    begun: ({ by, on }: { readonly by: string; readonly on: string }) => `begun by ${by}, ${on}`,
    edits: ({ edits }: { readonly edits: number }) =>
      edits === 0 ? 'no edits yet' : counted(edits, 'edit', 'edits'),
    faults: ({ faults }: { readonly faults: number }) =>
      faults === 0 ? 'no faults' : `${counted(faults, 'fault', 'faults')} to mend before it can be published`,
    doubts: ({ doubts }: { readonly doubts: number }) => counted(doubts, 'doubt', 'doubts'),
    open: 'Go on writing',
    publish: 'Publish',
    publishUnchecked: 'Publish unchecked',
    show: 'What the audit says',
    discard: 'Discard',
    discarded: ({ name }: { readonly name: string }) => `The draft of ${name} is discarded.`,
    bringBack: 'Bring it back',
    published: ({ name, revision }: { readonly name: string; readonly revision: number }) =>
      `${name}, revision ${revision}, is in the library. New builds can begin from it.`,
  },
  import: {
    title: 'From a file',
    dropHere: 'Drop a file that ends with .bedplate-spec here, or choose one.',
    choose: 'Choose a file',
    file: 'File of an engine spec',
    reading: ({ fileName }: { readonly fileName: string }) => `Reading ${fileName}`,
    added: ({ name, revision }: { readonly name: string; readonly revision: number }) =>
      `${name} is in the library as revision ${revision}.`,
    known: ({ name, revision }: { readonly name: string; readonly revision: number }) =>
      `${name} was in the library already, as revision ${revision}, word for word.`,
  },
}
