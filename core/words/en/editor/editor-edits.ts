import { counted } from '../formats.ts'
import type { OfThings } from './editor.ts'

type None = Record<never, never>

const things = ({ count }: OfThings) => counted(count, 'thing', 'things')

/** What an edit of the editor did, for `undo` and `redo`. */
export const editorEdits = {
  placed: ({ kind }: { readonly kind: 'fastener' | 'dowel' | 'oil-passage' }) =>
    ({ fastener: 'place a fastener', dowel: 'place a dowel', 'oil-passage': 'place an oil way' })[kind],
  moved: (facts: OfThings) => `move ${things(facts)}`,
  aligned: (facts: OfThings) => `align ${things(facts)}`,
  mirrored: (facts: OfThings) => `mirror ${things(facts)}`,
  repeated: (facts: OfThings) => `repeat ${things(facts)}`,
  takenOut: (facts: OfThings) => `take out ${things(facts)}`,
  orderTapped: ({ order }: { readonly order: string }) => `the order “${order}”`,
  grouped: ({ group }: { readonly group: string }) => `group ${group}`,
  passAdded: ({ pass }: { readonly pass: number }) => `add pass ${pass}`,
  passTakenOut: ({ pass }: { readonly pass: number }) => `take out pass ${pass}`,
  passMoved: ({ pass }: { readonly pass: number }) => `move pass ${pass}`,
  procedureAdded: ({ face }: { readonly face: string }) => `add a procedure for ${face}`,
  groupAdded: ({ group }: { readonly group: string }) => `add the group “${group}”`,
  chartChanged: ({ fit }: { readonly fit: string }) => `chart of ${fit}`,
  entryTakenOut: ({ name }: { readonly name: string }) => `take out ${name}`,
  doubtAccepted: (_: None) => 'accept a doubt',
  doubtOpenAgain: (_: None) => 'doubt it again',
  pasted: (facts: OfThings) => `place ${counted(facts.count, 'fastener', 'fasteners')} by a table`,
}
