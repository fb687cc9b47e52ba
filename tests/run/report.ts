import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'

/** How one check ended. A skipped one carries its reason; `twice` is one that failed and passed when it was run again. */
export type Ended =
  | { readonly name: string; readonly outcome: 'passed'; readonly twice?: true }
  | { readonly name: string; readonly outcome: 'failed' }
  | { readonly name: string; readonly outcome: 'skipped'; readonly reason: string }

/** The variable that tells a reporter inside a test runner where to leave its report. */
export const reportVariable = 'BEDPLATE_REPORT'

export function writeReport(ended: readonly Ended[]): void {
  const file = process.env[reportVariable]
  if (file === undefined) return
  mkdirSync(dirname(file), { recursive: true })
  writeFileSync(file, JSON.stringify(ended))
}

/**
 * What a test runner left behind. One that left nothing crashed, one that ran nothing proves nothing, and one that ended
 * badly without a failed test failed outside its tests: each is a failure of its own.
 */
export function readReport(runner: string, file: string, exitCode: number | null): readonly Ended[] {
  const failed = (how: string): Ended => ({ name: `${runner} ${how}`, outcome: 'failed' })
  if (!existsSync(file)) return [failed('crashed')]
  const ended = JSON.parse(readFileSync(file, 'utf8')) as readonly Ended[]
  if (!ended.some(({ outcome }) => outcome !== 'skipped')) return [...ended, failed('ran nothing')]
  const isWorse = exitCode !== 0 && !ended.some(({ outcome }) => outcome === 'failed')
  return isWorse ? [...ended, failed(`ended with ${exitCode ?? 'a signal'}`)] : ended
}

/** What ran together under one name, with the time from its start to its end. */
export interface Part {
  readonly name: string
  readonly seconds: number
  readonly ended: readonly Ended[]
}

/** A line for each part with its time and how many of it passed, and one for the whole, where parts run beside each other. */
export function partLines(parts: readonly Part[], seconds: number): readonly string[] {
  const width = Math.max(...parts.map(({ name }) => name.length))
  const line = (name: string, seconds: number, ended: readonly Ended[]): string => {
    const passed = ended.filter(({ outcome }) => outcome === 'passed').length
    return `${name.padEnd(width)}  ${seconds.toFixed(1).padStart(6)} s  ${passed} of ${ended.length}`
  }
  const all = parts.flatMap(({ ended }) => ended)
  return [...parts.map((part) => line(part.name, part.seconds, part.ended)), line('all', seconds, all)]
}

/** The closing lines: skipped checks with their reasons, those that passed when they were run again and failed ones by name, and last the count. */
export function closingLines(ended: readonly Ended[]): readonly string[] {
  const count = (outcome: Ended['outcome']): number => ended.filter((one) => one.outcome === outcome).length
  const skipped = count('skipped')
  return [
    ...ended.flatMap((one) => (one.outcome === 'skipped' ? [`skipped  ${one.name}: ${one.reason}`] : [])),
    ...ended.flatMap((one) => ('twice' in one ? [`again    ${one.name}: it failed at first`] : [])),
    ...ended.flatMap((one) => (one.outcome === 'failed' ? [`failed   ${one.name}`] : [])),
    `${count('passed')} passed, ${count('failed')} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`,
  ]
}
