import type { Point } from '../../plane/index.ts'
import type { Line } from './label.ts'

/** A thing that is named in a lane: where it is, in mm of the engine's own frame, and to which edge its name goes. */
export interface LaneName {
  readonly id: string
  readonly about?: string
  readonly at: Point
  readonly lines: readonly Line[]
  /** The edge of growing y, that of falling y, or either: whichever stands for its like on the sheet. */
  readonly edge: 'plus' | 'minus' | 'low' | 'high'
  /** Whether its tick goes from the thing itself, or only from the edge of the case. */
  readonly fromThing: boolean
}
