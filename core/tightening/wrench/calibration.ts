import { problem, type Problem } from '../../problem/index.ts'
import type { Wrench } from './wrench.ts'

const mostCycles = 5000

/**
 * What is to be said of a wrench's calibration on a day (`2026-03-31`); null while it holds, the last day and
 * the last cycle included: 12 months or 5000 cycles, whichever comes first (ISO 6789).
 */
export function calibrationWarning({ name, calibration }: Wrench, today: string): Problem | null {
  if (calibration === undefined) return problem('calibration-unknown', { name })
  const { on, cycles } = calibration
  if (on > today) return problem('calibration-in-future', { name, on })
  if (today > aYearAfter(on)) return problem('calibration-overdue', { name, on, cycles, due: 'months' })
  return cycles > mostCycles ? problem('calibration-overdue', { name, on, cycles, due: 'cycles' }) : null
}

/**
 * As text, which sorts as the days do. A 29 February gives one that is not there, between the two that are.
 */
function aYearAfter(day: string): string {
  return `${String(Number(day.slice(0, 4)) + 1).padStart(4, '0')}${day.slice(4)}`
}
