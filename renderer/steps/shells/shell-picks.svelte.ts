import type { Half, Proposal } from '../../../core/bearing/index.ts'

export interface Pick {
  readonly upper: string
  readonly lower: string
  readonly reason: string
}

interface Other {
  readonly position: string
  readonly half: Half
  readonly grade: string
  readonly reason: string
}

/** What a person chose instead of the proposal, bearing by bearing, until all are confirmed together. */
export class ShellPicks {
  readonly #proposals: () => readonly Proposal[]
  #picks = $state.raw<Readonly<Record<string, Pick>>>({})

  constructor(proposals: () => readonly Proposal[]) {
    this.#proposals = proposals
  }

  pick(position: string, pick: Pick) {
    this.#picks = { ...this.#picks, [position]: pick }
  }

  forget(position: string) {
    this.#picks = Object.fromEntries(Object.entries(this.#picks).filter(([other]) => other !== position))
  }

  pickAt(position: string): Pick | null {
    return this.#picks[position] ?? null
  }

  /** What would be fitted: the person's choice, else the proposal, else nothing yet. */
  pairAt(position: string): { readonly upper: string; readonly lower: string } | null {
    const pick = this.pickAt(position)
    if (pick) return pick
    const proposal = this.#proposals().find((each) => each.position === position)
    return proposal?.upper && proposal.lower
      ? { upper: proposal.upper.grade, lower: proposal.lower.grade }
      : null
  }

  /** The halves that differ from the proposal, as the command takes them. */
  get others(): Other[] {
    return this.#proposals().flatMap((proposal) => {
      const pick = this.pickAt(proposal.position)
      if (!pick) return []
      return (['upper', 'lower'] as const)
        .filter((half) => pick[half] !== proposal[half]?.grade)
        .map((half) => ({ position: proposal.position, half, grade: pick[half], reason: pick.reason }))
    })
  }
}
