import type { Fit } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { lengthAmount, type Length } from '../../quantity/index.ts'
import { exactly, type Range } from '../clearance.ts'
import { wallOf, type Half } from '../choice/pairs.ts'
import { undersized } from '../sizes/undersize.ts'

/** Shells of one kind that are there. */
export interface TrayLine {
  /** What is written on the compartment or the single shell; unlike that of every other line. */
  readonly label: string
  readonly grade: string
  /** The name of the spec's undersize; null for the standard size. */
  readonly undersize: string | null
  readonly half: Half | 'either'
  readonly count: number
  /** The wall as measured at the crown, at 20 °C; null where the grade's band has to do. */
  readonly wall: Length | null
}

export interface Tray {
  /** Whether an upper and a lower shell are the same part, or differ, by an oil groove for example. */
  readonly halves: 'alike' | 'differ'
  readonly lines: readonly TrayLine[]
}

/** Shells that may be taken for one another: a line of the tray, or what can only be ordered. */
export interface ShellKind {
  /** Null for what is not in the tray. */
  readonly label: string | null
  readonly grade: string
  readonly undersize: string | null
  readonly half: Half | 'either'
  readonly wall: Range
  readonly pieces: number
  /** Whether more of the same can be ordered: not of a shell that was picked by its measured wall. */
  readonly orderable: boolean
}

/**
 * The kinds of a tray, and of every grade of these undersizes what could be ordered beside it. A line without a measured
 * wall whose grade has no band is none of them: its clearance is not known.
 *
 * Refuses `grade-unknown`, `undersize-unknown`, `count-not-whole`, `size-not-above-zero`, `labels-alike`.
 */
export function kindsOf(
  fit: Fit,
  tray: Tray,
  undersizes: ReadonlySet<string | null>,
): Outcome<readonly ShellKind[]> {
  const kinds: ShellKind[] = []
  const labels = new Set<string>()
  const isOrdered = (a: ShellKind, b: Omit<ShellKind, 'label' | 'wall' | 'pieces' | 'orderable'>) =>
    a.orderable && a.grade === b.grade && a.undersize === b.undersize && a.half === b.half
  const halves = tray.halves === 'alike' ? (['either'] as const) : (['upper', 'lower'] as const)

  for (const line of tray.lines) {
    const { label, grade, undersize, count } = line
    if (labels.has(label)) return refused('labels-alike', { label })
    if (!Number.isSafeInteger(count) || count < 0) return refused('count-not-whole', { label, count })
    const wall = wallOfLine(fit, line)
    if (!wall.ok && wall.problem.code !== 'wall-unknown') return wall
    labels.add(label)
    if (!wall.ok) continue
    const half = tray.halves === 'alike' ? 'either' : line.half
    const same = kinds.some((each) => isOrdered(each, { grade, undersize, half }))
    const orderable = line.wall === null && halves.some((each) => each === half) && !same
    kinds.push({ label, grade, undersize, half, wall: wall.value, pieces: count, orderable })
  }
  for (const undersize of undersizes) {
    const sized = ofSize(fit, undersize)
    if (!sized.ok) return sized
    for (const { grade } of fit.grades)
      for (const half of halves) {
        const wall = wallOf(sized.value, fit.name, grade)
        if (wall.ok && !kinds.some((each) => isOrdered(each, { grade, undersize, half })))
          kinds.push({ label: null, grade, undersize, half, wall: wall.value, pieces: 0, orderable: true })
      }
  }
  return done(kinds)
}

/** The fit with the walls of an undersize; the fit itself for null. Refuses `undersize-unknown`. */
export function ofSize(fit: Fit, undersize: string | null): Outcome<Fit> {
  return undersize === null ? done(fit) : undersized(fit, undersize)
}

function wallOfLine(fit: Fit, { label, grade, undersize, wall }: TrayLine): Outcome<Range> {
  const sized = ofSize(fit, undersize)
  if (!sized.ok) return sized
  const ofGrade = wallOf(sized.value, label, grade)
  if (wall === null || (!ofGrade.ok && ofGrade.problem.code === 'grade-unknown')) return ofGrade
  return wall > 0
    ? done(exactly(wall))
    : refused('size-not-above-zero', { place: label, what: 'wall', typed: lengthAmount(wall, 'mm') })
}
