import { compartmentLabel, singleLabel, undersized } from '../../../core/bearing/index.ts'
import type { NotedTray } from '../../../core/builds/index.ts'
import type { LengthUnit } from '../../../core/quantity/index.ts'
import { halfName, type Fit } from '../../../core/engine/index.ts'

/** One compartment of the tray, or a single shell where a wall is typed. */
interface Line {
  readonly label: string
  readonly grade: string
  readonly undersize: string | null
  readonly half: 'upper' | 'lower' | 'either'
  readonly count: string
  readonly wall: { readonly typed: string; readonly unit: LengthUnit }
  readonly kind: 'compartment' | 'single'
}

/** The tray as it is being counted: a compartment for each grade and size, and single shells with measured walls. */
export class TrayForm {
  readonly #fit: Fit
  readonly #undersizes: readonly (string | null)[]
  readonly #unit: LengthUnit
  #halves = $state<'alike' | 'differ'>('alike')
  #lines = $state.raw<readonly Line[]>([])

  /** `undersizes` are those that the fit's journals are ground to, null for the standard size. */
  constructor(fit: Fit, undersizes: readonly (string | null)[], unit: LengthUnit, noted: NotedTray | null) {
    this.#fit = fit
    this.#undersizes = undersizes
    this.#unit = unit
    this.#halves = noted?.halves ?? fit.seating?.halves ?? 'alike'
    this.#lines = this.#compartments().map((line) => {
      const before = noted?.lines.find((each) => isCompartment(each, line))
      // It keeps the label that it was noted with, which an earlier version wrote in a language.
      return before ? { ...line, label: before.label, count: String(before.count) } : line
    })
    for (const line of noted?.lines ?? []) {
      if (line.wall === null) continue
      const { typed, unit } = line.wall
      const single = { ...line, count: String(line.count), wall: { typed, unit }, kind: 'single' as const }
      this.#lines = [...this.#lines, single]
    }
  }

  get halves() {
    return this.#halves
  }
  set halves(halves: 'alike' | 'differ') {
    this.#halves = halves
    this.#lines = this.#compartments()
  }
  get compartments() {
    return this.#lines.filter(({ kind }) => kind === 'compartment')
  }
  get singles() {
    return this.#lines.filter(({ kind }) => kind === 'single')
  }

  change(line: Line, change: Partial<Line>) {
    this.#lines = this.#lines.map((each) => (each === line ? { ...each, ...change } : each))
  }

  addSingle() {
    const single: Line = {
      label: this.#freeLabel(this.singles.length + 1),
      grade: this.#gradesOf(this.#undersizes[0] ?? null)[0]!.grade,
      undersize: this.#undersizes[0] ?? null,
      half: this.#halves === 'alike' ? 'either' : 'upper',
      count: '1',
      wall: { typed: '', unit: this.#unit },
      kind: 'single',
    }
    this.#lines = [...this.#lines, single]
  }

  remove(line: Line) {
    this.#lines = this.#lines.filter((each) => each !== line)
  }

  /** As the command takes them; an empty count is none. */
  get lines() {
    return this.#lines.map(({ label, grade, undersize, half, count, wall }) => ({
      ...{ label, grade, undersize, half, wall: { ...wall } },
      count: count.trim() === '' ? '0' : count,
    }))
  }

  /** The first label from this number on that no single shell has. */
  #freeLabel(number: number): string {
    const label = singleLabel(number)
    return this.singles.some((each) => each.label === label) ? this.#freeLabel(number + 1) : label
  }

  /** The grades that shells of a size come in. */
  #gradesOf(undersize: string | null): Fit['grades'] {
    const sized = undersize === null ? null : undersized(this.#fit, undersize)
    return sized?.ok ? sized.value.grades : this.#fit.grades
  }

  #compartments(): readonly Line[] {
    const halves = this.#halves === 'alike' ? (['either'] as const) : (['upper', 'lower'] as const)
    const sizeOf = (key: string | null) =>
      this.#fit.undersizes.find(({ name }) => name.key === key)?.undersize ?? null
    return this.#undersizes.flatMap((undersize) =>
      this.#gradesOf(undersize).flatMap(({ grade }) =>
        halves.map((half) => ({
          label: compartmentLabel(
            {
              ...{ grade, undersize: sizeOf(undersize) },
              half: half === 'either' ? half : halfName(this.#fit, half),
            },
            this.#unit,
          ),
          grade,
          undersize,
          half,
          count: '',
          wall: { typed: '', unit: this.#unit },
          kind: 'compartment' as const,
        })),
      ),
    )
  }
}

function isCompartment(noted: NotedTray['lines'][number], { grade, undersize, half }: Line): boolean {
  return noted.wall === null && noted.grade === grade && noted.undersize === undersize && noted.half === half
}
