import { isolated } from '../../core/problem/index.ts'
import type { Comparison } from '../../core/builds/index.ts'
import { withUnit } from '../../core/quantity/index.ts'
import { dayAndTime } from '../parts/time.ts'
import { clearanceText, verdictWords } from '../sheet/words.ts'

/** One line of two builds side by side, in words; an empty text where a build does not have it. */
export interface CompareRow {
  readonly about: string
  readonly first: string
  readonly second: string
  readonly same: boolean
}

type Of<Part extends keyof Comparison> = Comparison[Part] extends readonly { readonly first: infer Thing }[]
  ? NonNullable<Thing>
  : never

/** Everything that is compared, part by part, as the page shows it. */
export function compareRows(
  compared: Comparison,
): readonly { readonly part: string; readonly rows: readonly CompareRow[] }[] {
  return [
    { part: 'Marks and shells', rows: rowsOf(compared.bearings, bearingText) },
    { part: 'Checks', rows: rowsOf(compared.checks, checkText) },
    { part: 'Procedures', rows: rowsOf(compared.runs, runText) },
    { part: 'Pulls', rows: rowsOf(compared.pulls, pullText) },
    { part: 'Steps', rows: rowsOf(compared.steps, stepText) },
  ]
}

function rowsOf<Thing>(
  things: readonly {
    readonly about: string
    readonly first: Thing | null
    readonly second: Thing | null
    readonly same: boolean
  }[],
  text: (thing: Thing) => string,
): readonly CompareRow[] {
  return things.map(({ about, first, second, same }) => ({
    about,
    first: first === null ? '' : text(first),
    second: second === null ? '' : text(second),
    same,
  }))
}

function bearingText({ housing, journal, upper, lower, clearance }: Of<'bearings'>): string {
  const shells = `${upper?.grade ?? '–'} above, ${lower?.grade ?? '–'} below`
  return `${housing ?? '?'} × ${journal ?? '?'}: ${shells}, ${clearanceText(clearance)}`
}

function checkText({ verdict, reading, note }: Of<'checks'>): string {
  return [verdict === 'good' ? 'good' : '! not good', reading?.typed, note].filter(Boolean).join(', ')
}

function runText({ pulls, takenBack, flags, ownOrder }: Of<'runs'>): string {
  return `${pulls} pulls, ${takenBack} taken back, ${flags} flags${ownOrder ? ', own order' : ''}`
}

function pullText({ reading, verdict, outOfOrder }: Of<'pulls'>): string {
  const read = reading && withUnit(reading.typed, reading.unit)
  return [read, verdictWords[verdict], outOfOrder && `before its turn: ${outOfOrder}`]
    .filter(Boolean)
    .join(', ')
}

function stepText({ done }: Of<'steps'>): string {
  return done ? `✓ ${dayAndTime(done.at)}, ${isolated(done.person)}` : 'not done'
}
