import { isolated } from '../../core/problem/index.ts'
import { clearanceText, type Clearance } from '../../core/bearing/index.ts'
import type { BuildSheet, SheetPull } from '../../core/builds/index.ts'
import { amountsIn, degrees, nanometres } from '../../core/quantity/index.ts'
import type { TorqueUnit } from '../../core/quantity/index.ts'
import {
  turningText,
  answerText,
  atTorqueText,
  isTorqueUnit,
  lengthSpan,
  showWindow,
  shownAmount,
} from '../../core/tightening/index.ts'
import type { Words } from '../../core/words/index.ts'

type Stamp = NonNullable<BuildSheet['started']>

/** `14 Mar 2026, 09:05:12, A. Weller`; a dash for what has not happened. */
export function stampText(words: Words, stamp: Stamp | null): string {
  return stamp ? `${unbroken(words.dates.dayAndTime(stamp.at))}, ${isolated(stamp.person)}` : '–'
}

export function clearanceOrNone(words: Words, clearance: Clearance | null): string {
  return clearance ? clearanceText(words, clearance) : words.sheet.fit.notComputed
}

/** A date is never parted from its time by the end of a line. */
function unbroken(time: string): string {
  return time.replace(' ', '\u00a0')
}

/** `14 Mar 2026, 09:05`; a dash for what has not happened. */
export function dayAndMinute(words: Words, stamp: Stamp | null): string {
  return stamp ? unbroken(words.dates.dayAndMinute(stamp.at)) : '–'
}

/** Target and limits of a pull in the unit that was read, else in the bench's: `24 N·m (22.8 to 25.2)`. */
export function windowText(
  words: Words,
  { window, reading, torque }: SheetPull,
  benchUnit: TorqueUnit,
): string {
  if (window?.kind === 'length') {
    const lengths = words.amounts.span(lengthSpan(window, reading?.unit === 'in' ? 'in' : 'mm'))
    if (window.torque === undefined) return lengths
    const unit = torque && isTorqueUnit(torque.unit) ? torque.unit : benchUnit
    return `${lengths}, ${atTorqueText(words, window.torque, unit)}`
  }
  return targetText(words, window, reading && isTorqueUnit(reading.unit) ? reading.unit : benchUnit)
}

/** Target and limits in a unit; nothing where there is nothing to read, or any reading is right. */
export function targetText(words: Words, window: SheetPull['window'], unit: TorqueUnit): string {
  if (!window || window.kind === 'free-length') return ''
  if (window.kind === 'length') return words.amounts.span(lengthSpan(window, 'mm'))
  if (window.kind === 'turning') return turningText(words, window)
  const { amount } = words.amounts
  const { target, least, most } = showWindow(window, unit)
  return words.sheet.run.window({
    target: amount(shownAmount(target, window.kind === 'angle' ? '°' : unit)),
    least: amount(shownAmount(least)),
    most: amount(shownAmount(most)),
  })
}

/** `Click 100, no. 4711, calibrated 31 Mar 2026`, with its adapter where it has one. */
export function heldText(
  words: Words,
  { wrench, number, calibrated, adapter }: NonNullable<SheetPull['held']>,
): string {
  const withAdapter =
    adapter === undefined
      ? wrench
      : words.sheet.run.held({
          wrench,
          adapter: adapter.name,
          offset: amountsIn(words).length(nanometres(adapter.offset_nm), 'mm', 1),
          angle: amountsIn(words).angle(degrees(adapter.angle_deg)),
        })
  return words.sheet.results.wrenchWith({
    wrench: withAdapter,
    number: number ?? null,
    calibrated: calibrated ?? null,
  })
}

/** A flag, who raised it, and what answered it. */
export function flagText(
  words: Words,
  { number, fastener, text, about, raised, answer }: BuildSheet['runs'][number]['flags'][number],
): string {
  const { run } = words.sheet
  const answered =
    answer === null
      ? run.notAnswered
      : run.answer({ text: answerText(words, answer.text), stamp: stampText(words, answer) })
  return `${run.flag({ flag: number, fastener, text, about, stamp: stampText(words, raised) })} ${answered}`
}
