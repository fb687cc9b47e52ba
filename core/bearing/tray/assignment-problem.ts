/** One way to fill a place: what it costs, whole, and the kinds it takes a piece of; a kind may come twice. */
export interface Option {
  readonly cost: number
  readonly takes: readonly number[]
}

/** What is to be assigned: the options of every place, one at least; the pieces there are of each kind; what may be ordered. */
export interface AssignmentProblem {
  readonly places: readonly (readonly Option[])[]
  readonly pieces: readonly number[]
  readonly order: {
    /** By kind: whether a piece beyond those there are can be ordered. */
    readonly kinds: readonly boolean[]
    /** What ordering a piece costs, and how many may be ordered; `Infinity` for any number. */
    readonly cost: number
    readonly most: number
  }
  /** Every cost is a multiple of it. */
  readonly grain: number
}

/** One option for every place, and what they cost together. */
export interface Assignment {
  /** For every place the index of the option taken. */
  readonly options: readonly number[]
  readonly cost: number
}
