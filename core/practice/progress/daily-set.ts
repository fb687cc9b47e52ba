import type { DrillProgress } from './progress.ts'
import type { DrillKind, RoundKind } from '../round.ts'

/** A drill of one engine. */
export interface DrillOf {
  readonly engine: string
  readonly drill: DrillKind
}

/** How long one round takes, in minutes: an estimate from the number of its questions, with no source and measured on nobody. */
export const drillMinutes: Readonly<Record<DrillKind, number>> = {
  order: 3,
  chart: 2,
  values: 3,
  angle: 2,
  mirror: 2,
  measure: 4,
  fault: 4,
}

/** What a day's practice comes to, in minutes. */
const dailyMinutes = 10

/**
 * What to do today: what is due, the longest due first, then what was never done, as `offered` lists it, until ten minutes are
 * full. What was done since the day began counts in. At least one as long as anything is due and less was done.
 */
export function dailySet(
  offered: readonly DrillOf[],
  progress: readonly DrillProgress[],
  now: string,
  dayBegan: string,
): readonly DrillOf[] {
  const known = new Map(progress.map((each) => [keyOf(each), each]))
  const [nowMs, beganMs] = [Date.parse(now), Date.parse(dayBegan)]
  const doneToday = progress.filter(
    ({ lastAt }) => Date.parse(lastAt) >= beganMs && Date.parse(lastAt) <= nowMs,
  )
  const due = offered
    .flatMap((of) => {
      const dueMs = Date.parse(known.get(keyOf(of))?.dueAt ?? '')
      return dueMs <= nowMs ? [{ ...of, dueMs }] : []
    })
    .toSorted((a, b) => a.dueMs - b.dueMs)
  const fresh = offered.filter((each) => !known.has(keyOf(each)))
  let minutes = doneToday.reduce((sum, { drill }) => sum + minutesOf(drill), 0)
  const set: DrillOf[] = []
  for (const { engine, drill } of [...due, ...fresh]) {
    if (minutes > 0 && minutes + drillMinutes[drill] > dailyMinutes) continue
    minutes += drillMinutes[drill]
    set.push({ engine, drill })
  }
  return set
}

/** A dry run is a day's practice. */
function minutesOf(drill: RoundKind): number {
  return drill === 'dry-run' ? dailyMinutes : drillMinutes[drill]
}

function keyOf({ engine, drill }: { readonly engine: string; readonly drill: RoundKind }): string {
  return `${drill}/${engine}`
}

/** What of a minimum is still missing before a person leads a build of an engine. */
export interface MissingPractice {
  readonly drill: DrillKind
  readonly faultless: number
}

/** The drills of which fewer rounds than `least` went without an error. */
export function missingPractice(
  offered: readonly DrillOf[],
  progress: readonly DrillProgress[],
  least: number,
): readonly MissingPractice[] {
  return offered.flatMap(({ engine, drill }) => {
    const faultless = progress.find((each) => each.engine === engine && each.drill === drill)?.faultless ?? 0
    return faultless < least ? [{ drill, faultless }] : []
  })
}
