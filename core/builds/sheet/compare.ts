import type { Phrase } from '../../problem/index.ts'
import { torqueAtFastener } from '../../tightening/index.ts'
import type { BuildSheet, SheetStep } from './sheet.ts'
import type { SheetBearing, SheetFit } from './fits.ts'
import type { SheetCheck } from './checks.ts'
import type { SheetPull, SheetRun } from './runs.ts'

/** One thing of two builds side by side; null where a build does not have it. */
export interface Difference<Thing> {
  /** What it is: a bearing, a check, a fastener in a pass. */
  readonly about: Phrase
  readonly first: Thing | null
  readonly second: Thing | null
  readonly same: boolean
}

/** Two builds of the same engine, side by side, in the order of the spec. Of what was done twice, the last counts. */
export interface Comparison {
  /** Whether both were built by the same revision of the spec, to the letter. */
  readonly sameSpec: boolean
  /** Marks, shells and clearance of each bearing. */
  readonly bearings: readonly Difference<SplitBearing>[]
  readonly checks: readonly Difference<Pick<SheetCheck, 'verdict' | 'reading' | 'note'>>[]
  /** Pulls that stayed, of every run. */
  readonly pulls: readonly Difference<Pick<SheetPull, 'reading' | 'verdict' | 'outOfOrder'>>[]
  /** How many pulls were taken back, how many flags raised, in each procedure. */
  readonly runs: readonly Difference<RunCount>[]
  readonly steps: readonly Difference<Pick<SheetStep, 'done'>>[]
}

type SplitBearing = SheetBearing & Pick<SheetFit, 'split'>

export interface RunCount {
  readonly pulls: number
  readonly takenBack: number
  readonly flags: number
  /** Whether it went through an order of a person's own. */
  readonly ownOrder: boolean
}

/** Two sheets side by side. That both are of one engine is for the caller to see to: what does not match stands alone. */
export function compareBuilds(first: BuildSheet, second: BuildSheet): Comparison {
  return {
    sameSpec: first.build !== null && first.build.specSha256 === second.build?.specSha256,
    bearings: sideBySide(first, second, bearingsOf, (a, b) =>
      hasEqualFacts(a, b, (it) => [it.housing, it.journal, it.upper?.grade, it.lower?.grade]),
    ),
    checks: sideBySide(first, second, checksOf, (a, b) =>
      hasEqualFacts(a, b, (it) => [it.verdict, it.reading?.length_nm]),
    ),
    pulls: sideBySide(first, second, pullsOf, (a, b) =>
      hasEqualFacts(a, b, (it) => [
        it.verdict,
        it.reading && torqueAtFastener(it.reading),
        it.reading?.unit,
        it.outOfOrder === null,
      ]),
    ),
    runs: sideBySide(first, second, runsOf, (a, b) =>
      hasEqualFacts(a, b, (it) => [it.pulls, it.takenBack, it.flags, it.ownOrder]),
    ),
    steps: sideBySide(
      first,
      second,
      ({ steps }) => steps.map((step) => [stepCalled(step.name), { done: step.done }] as const),
      (a, b) => (a.done === null) === (b.done === null),
    ),
  }
}

type NamedList<Thing> = readonly (readonly [about: Phrase, thing: Thing])[]

function sideBySide<Thing>(
  first: BuildSheet,
  second: BuildSheet,
  of: (sheet: BuildSheet) => NamedList<Thing>,
  isSame: (first: Thing, second: Thing) => boolean,
): readonly Difference<Thing>[] {
  const [left, right] = [byName(of(first)), byName(of(second))]
  return [...new Set([...left.keys(), ...right.keys()])].map((name) => {
    const [a, b] = [left.get(name) ?? null, right.get(name) ?? null]
    return {
      about: JSON.parse(name) as Phrase,
      first: a,
      second: b,
      same: a !== null && b !== null && isSame(a, b),
    }
  })
}

function byName<Thing>(list: NamedList<Thing>): ReadonlyMap<string, Thing> {
  return new Map(list.map(([about, thing]) => [JSON.stringify(about), thing]))
}

function hasEqualFacts<Thing>(a: Thing, b: Thing, facts: (thing: Thing) => readonly unknown[]): boolean {
  const others = facts(b)
  return facts(a).every((fact, at) => fact === others[at])
}

function bearingsOf({ fits }: BuildSheet): NamedList<SplitBearing> {
  return fits.flatMap(({ name, split, rows }) =>
    rows.map((row) => {
      const about = { code: 'bearingOf', facts: { fit: name, position: row.position } } as const
      return [about, { ...row, split }] as const
    }),
  )
}

function checksOf({ checks }: BuildSheet): NamedList<Pick<SheetCheck, 'verdict' | 'reading' | 'note'>> {
  return checks
    .filter(({ counts }) => counts)
    .map(({ step, verdict, reading, note }) => [stepCalled(step), { verdict, reading, note }])
}

function pullsOf({ runs }: BuildSheet): NamedList<Pick<SheetPull, 'reading' | 'verdict' | 'outOfOrder'>> {
  return runs.flatMap(({ name, pulls }) =>
    pulls
      .filter(({ takenBack }) => takenBack === null)
      .map(({ pass, kind, fastener, instruction, reading, verdict, outOfOrder }) => {
        const facts = { procedure: name, pass, kind, thing: fastener ?? instruction ?? '' }
        return [
          { code: 'pullInPass', facts },
          { reading, verdict, outOfOrder },
        ] as const
      }),
  )
}

function runsOf({ runs }: BuildSheet): NamedList<RunCount> {
  return runs.map((run: SheetRun) => {
    const takenBack = run.pulls.filter((pull) => pull.takenBack !== null).length
    return [
      { code: 'procedureCalled', facts: { procedure: run.name } },
      { pulls: run.pulls.length, takenBack, flags: run.flags.length, ownOrder: run.ownOrders.length > 0 },
    ]
  })
}

function stepCalled(step: string): Phrase {
  return { code: 'stepCalled', facts: { step } }
}
