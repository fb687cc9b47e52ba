import { numberAndKind } from './passes.ts'

const orders = {
  spec: 'as the spec has it',
  own: 'own order',
  reversed: 'from its end',
  'centre-out': 'centre out',
  spiral: 'spiral',
  crosswise: 'crosswise',
  'end-to-end': 'end to end',
}
export interface OfOrder {
  readonly order: keyof typeof orders
}
export interface OfRange {
  readonly least: string
  readonly most: string
}

/** How the bolts of a face share the clamp load, pass by pass, in two orders side by side. */
export const clampMap = {
  title: ({ procedure }: { readonly procedure: string }) => `Clamp map: ${procedure}`,
  teachingModel: 'A teaching model. It shows how bolts take load from each other, not what one bolt holds.',
  afterPass: 'After pass',
  pass: numberAndKind,
  between: 'Between the faces',
  materials: { metal: 'metal', gasket: 'gasket' },
  orders,
  inOrder: ({ order }: OfOrder) => `Order ${orders[order]}`,
  /** Of the two that are compared: 1 or 2. */
  whichOrder: ({ place }: { readonly place: number }) => `Order ${place}`,
  picture: ({ face, order, pass }: OfOrder & { readonly face: string; readonly pass: number }) =>
    `Clamp map of ${face}, order ${orders[order]}, after pass ${pass}`,
  hold: ({ least, most }: OfRange) => `Bolts hold ${least} to ${most} kN.`,
  pressure: 'Pressure between the faces',
  open: 'open',
  megapascals: ({ least, most }: OfRange) => `${least} to ${most} MPa`,
  numbers: 'Number under a fastener: what it holds, in kN',
  table: ({ pass }: { readonly pass: number }) => `What each fastener holds after pass ${pass}, in kN`,
  fastener: 'Fastener',
  assumptions: 'What the model takes for granted',
}
