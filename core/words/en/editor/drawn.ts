import { counted } from '../formats.ts'
import { drawnForms } from './drawn-forms.ts'

/** What is drawn of an engine: its bearings, outlines, parts and beads, on the drawing and by numbers. */
export const drawn = {
  ...drawnForms,
  subject: 'Work on',
  subjects: {
    parts: 'Fasteners and holes',
    bearings: 'Bearings',
    outline: 'Outline',
    beads: 'Sealant beads',
  },
  kinds: {
    'face-part': 'Seal, plug, valve, strainer',
    saddle: 'Saddle',
    rod: 'Rod',
    balance: 'Balance bearing',
    corner: 'Corner',
    'bead-point': 'Point of the bead',
    'keep-out': 'Keep-out zone',
  },
  facePart: 'Part',
  faceParts: {
    seal: 'Lip seal',
    'two-piece-seal': 'Seal in two pieces',
    plug: 'Plug',
    'check-valve': 'Check valve',
    strainer: 'Strainer',
  },
  partName: 'What it is called',
  lip: 'Lip points',
  flow: 'Oil flows',
  ways: { inwards: 'inwards', outwards: 'outwards' },
  shaft: 'Shaft',
  depth: 'Below the face by',
  noBearings:
    'No bearing lies open on this face. Choose a face that shows saddles, rods or balance bearings, or add one under “Faces”.',
  onAxis: 'Main bearings and rods lie on the crank’s axis: only their place along it counts.',
  snapped: {
    axis: 'on the axis',
    saddle: ({ name }: { readonly name: string }) => `at saddle ${name}`,
    edge: 'on the edge',
    thing: ({ name }: { readonly name: string }) => `in line with ${name}`,
    mirror: ({ name }: { readonly name: string }) => `opposite ${name}`,
  },
  listed: {
    chosen: 'chosen',
    inOrder: ({ place }: { readonly place: number }) => `place ${place} in the order`,
  },
  handles: {
    corner: ({ number }: { readonly number: number }) => `corner ${number}`,
    beadPoint: ({ bead, number }: { readonly bead: string; readonly number: number }) =>
      `${bead}, point ${number}`,
    bearing: ({ kind, id }: { readonly kind: 'saddle' | 'rod' | 'balance'; readonly id: string }) =>
      ({ saddle: `saddle ${id}`, rod: `rod ${id}`, balance: `balance bearing ${id}` })[kind],
  },
  path: {
    grown: 'This face has no outline of its own: its edge is grown round what lies on it.',
    again: 'Draw the outline again',
    addCorner: 'Tap on the edge to add a corner there; drag a corner to move it.',
    drop: 'Leave the outline out',
    tapOn: 'Tap point after point on the drawing, or type each.',
    soFar: ({ count, least }: { readonly count: number; readonly least: number }) =>
      count < least
        ? `${counted(count, 'point', 'points')}; it is in the spec from ${least} on.`
        : `${counted(count, 'point', 'points')}, in the spec.`,
    takeBack: 'Take the last point back',
    finish: 'Finish',
    addPoint: 'Add this point',
  },
  beads: {
    which: 'Bead',
    new: 'New bead',
    none: 'This face has no bead yet.',
    begin: 'Draw it',
    width: 'Width of the bead',
    sealant: 'Sealant',
    openTime: 'Open time, min',
    form: 'Its path',
    forms: { open: 'open', closed: 'closed' },
    addPoint: 'Tap beside the bead to add a point there; drag a point to move it.',
  },
}
