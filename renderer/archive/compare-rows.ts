import { isolated, textIn, type Phrase } from '../../core/problem/index.ts'
import type { Comparison } from '../../core/builds/index.ts'
import type { Words } from '../../core/words/index.ts'
import { withUnit } from '../../core/quantity/index.ts'
import { clearanceOrNone } from '../sheet/words.ts'

/** One line of two builds side by side, in words; an empty text where a build does not have it. */
export interface CompareRow {
  readonly about: string
  readonly first: string
  readonly second: string
  readonly same: boolean
}

/** The same as a row of the table of two. */
export function cellsOf({ about, first, second, same }: CompareRow) {
  return { about, cells: [{ text: first }, { text: second }], differs: !same }
}

type Of<Part extends keyof Comparison> = Comparison[Part] extends readonly { readonly first: infer Thing }[]
  ? NonNullable<Thing>
  : never

type Part = keyof Words['archive']['compared']['parts']

/** Everything that is compared, part by part, as the page shows it. */
export function compareRows(
  words: Words,
  compared: Comparison,
): readonly { readonly part: Part; readonly rows: readonly CompareRow[] }[] {
  return [
    { part: 'bearings', rows: rowsOf(words, compared.bearings, (bearing) => bearingText(words, bearing)) },
    { part: 'checks', rows: rowsOf(words, compared.checks, (check) => checkText(words, check)) },
    { part: 'runs', rows: rowsOf(words, compared.runs, (run) => words.archive.compared.run(run)) },
    { part: 'pulls', rows: rowsOf(words, compared.pulls, (pull) => pullText(words, pull)) },
    { part: 'steps', rows: rowsOf(words, compared.steps, (step) => stepText(words, step)) },
  ]
}

function rowsOf<Thing>(
  words: Words,
  things: readonly {
    readonly about: Phrase
    readonly first: Thing | null
    readonly second: Thing | null
    readonly same: boolean
  }[],
  text: (thing: Thing) => string,
): readonly CompareRow[] {
  return things.map(({ about, first, second, same }) => ({
    about: textIn(words, words.phrases, about),
    first: first === null ? '' : text(first),
    second: second === null ? '' : text(second),
    same,
  }))
}

function bearingText(
  words: Words,
  { split, housing, journal, upper, lower, clearance }: Of<'bearings'>,
): string {
  const shells = words.archive.compared.shells({
    housing,
    journal,
    split,
    upper: upper?.grade ?? null,
    lower: lower?.grade ?? null,
  })
  return `${shells}, ${clearanceOrNone(words, clearance)}`
}

function checkText(words: Words, { verdict, reading, note }: Of<'checks'>): string {
  const answer = verdict === 'good' ? words.sheet.checks.good : words.sheet.checks.notGood
  return [answer, reading?.typed, note].filter(Boolean).join(', ')
}

function pullText(words: Words, { reading, verdict, outOfOrder }: Of<'pulls'>): string {
  const read = reading && withUnit(reading.typed, reading.unit)
  const early = outOfOrder && words.sheet.run.beforeItsTurn({ reason: outOfOrder })
  return [read, words.sheet.run.verdicts[verdict], early].filter(Boolean).join(', ')
}

function stepText(words: Words, { done }: Of<'steps'>): string {
  if (!done) return words.sheet.steps.notDone
  return words.archive.compared.stepDone({
    at: words.dates.dayAndTime(done.at),
    person: isolated(done.person),
  })
}
