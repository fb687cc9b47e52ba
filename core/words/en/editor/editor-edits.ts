import { counted } from '../formats.ts'
import { signals } from '../steps/dangers.ts'
import type { OfThings } from './editor.ts'

export interface OfCaution {
  readonly signal: keyof typeof signals
}
type None = Record<never, never>

const things = ({ count }: OfThings) => counted(count, 'thing', 'things')

type PlacedKind = keyof typeof placed

const placed = {
  fastener: 'place a fastener',
  dowel: 'place a dowel',
  'oil-passage': 'place an oil way',
  'face-part': 'place a part',
  saddle: 'place a saddle',
  rod: 'place a rod',
  balance: 'place a balance bearing',
  corner: 'place a corner',
  'bead-point': 'place a point of a bead',
  'keep-out': 'place a keep-out zone',
}

/** What an edit of the editor did, for `undo` and `redo`. */
export const editorEdits = {
  placed: ({ kind }: { readonly kind: PlacedKind }) => placed[kind],
  moved: (facts: OfThings) => `move ${things(facts)}`,
  aligned: (facts: OfThings) => `align ${things(facts)}`,
  mirrored: (facts: OfThings) => `mirror ${things(facts)}`,
  repeated: (facts: OfThings) => `repeat ${things(facts)}`,
  takenOut: (facts: OfThings) => `take out ${things(facts)}`,
  orderAdded: ({ order }: { readonly order: string }) => `add the order “${order}”`,
  orderTapped: ({ order }: { readonly order: string }) => `the order “${order}”`,
  grouped: ({ group }: { readonly group: string }) => `group ${group}`,
  passAdded: ({ pass }: { readonly pass: number }) => `add pass ${pass}`,
  passTakenOut: ({ pass }: { readonly pass: number }) => `take out pass ${pass}`,
  passMoved: ({ pass }: { readonly pass: number }) => `move pass ${pass}`,
  procedureAdded: ({ face }: { readonly face: string }) => `add a procedure for ${face}`,
  groupAdded: ({ group }: { readonly group: string }) => `add the group “${group}”`,
  chartChanged: ({ fit }: { readonly fit: string }) => `chart of ${fit}`,
  entryTakenOut: ({ name }: { readonly name: string }) => `take out ${name}`,
  stepAdded: ({ step }: { readonly step: string }) => `add the step “${step}”`,
  stepMoved: ({ step }: { readonly step: string }) => `move the step “${step}”`,
  entryAdded: ({ name }: { readonly name: string }) => `add ${name}`,
  cautionAdded: ({ signal }: OfCaution) => `add ${signals[signal]}`,
  cautionTakenOut: ({ signal }: OfCaution) => `take out ${signals[signal]}`,
  pageSaid: ({ page }: { readonly page: string }) => `page ${page}`,
  valueChecked: (_: None) => 'compare a value',
  demoReplaced: (_: None) => 'no copy of a demo any more',
  doubtAccepted: (_: None) => 'accept a doubt',
  doubtOpenAgain: (_: None) => 'doubt it again',
  outlineDrawn: ({ face }: { readonly face: string }) => `the outline of ${face}`,
  beadDrawn: ({ name }: { readonly name: string }) => `draw the bead “${name}”`,
  faceAdded: ({ face }: { readonly face: string }) => `add the face “${face}”`,
  fitAdded: ({ fit }: { readonly fit: string }) => `add the bearings “${fit}”`,
  marksAdded: ({ fit }: { readonly fit: string }) => `add marks to ${fit}`,
  gradesAdded: ({ fit }: { readonly fit: string }) => `add grades to ${fit}`,
  gradeMoved: ({ grade }: { readonly grade: string }) => `move the grade ${grade}`,
  ringsAdded: (_: Record<never, never>) => 'add the piston rings',
  bearingRenamed: ({ from, to }: { readonly from: string; readonly to: string }) => `call ${from} ${to}`,
  pasted: (facts: OfThings) => `place ${counted(facts.count, 'fastener', 'fasteners')} by a table`,
}
