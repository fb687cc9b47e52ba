export { isSpareOrder, withNewOrder, withoutOrder } from './new-order.ts'
export { grownOrder, orderNamed, painted, withSequence } from './order-edits.ts'
export type { OrderNamed } from './order-edits.ts'
export { movedToPlace, swapped, tapped } from './sequence.ts'
