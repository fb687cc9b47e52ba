import { isolated } from '../../core/problem/index.ts'
import { clearanceText, type Clearance } from '../../core/bearing/index.ts'
import type { BuildSheet, SheetPull } from '../../core/builds/index.ts'
import { degrees, formatAngle, formatLength, nanometres } from '../../core/quantity/index.ts'
import type { TorqueUnit } from '../../core/quantity/index.ts'
import { isTorqueUnit, lengthSpan, showWindow } from '../../core/tightening/index.ts'
import type { Words } from '../../core/words/index.ts'
import { dayAndTime } from '../parts/time.ts'

type Stamp = NonNullable<BuildSheet['started']>

/** `2026-03-14 09:05:12, A. Weller`; a dash for what has not happened. */
export function stampText(stamp: Stamp | null): string {
  return stamp ? `${dayAndTime(stamp.at)}, ${isolated(stamp.person)}` : '–'
}

export function clearanceOrNone(words: Words, clearance: Clearance | null): string {
  return clearance ? clearanceText(words, clearance) : words.sheet.fit.notComputed
}

/** Target and limits of a pull in the unit that was read, else in the bench's: `24 N·m (22.8 to 25.2)`. */
export function windowText(words: Words, { window, reading }: SheetPull, benchUnit: TorqueUnit): string {
  if (!window || window.kind === 'free-length') return ''
  if (window.kind === 'length')
    return words.amounts.span(lengthSpan(window, reading?.unit === 'in' ? 'in' : 'mm'))
  const unit = reading && isTorqueUnit(reading.unit) ? reading.unit : benchUnit
  const { target, least, most } = showWindow(window, unit)
  return words.sheet.run.window({
    target: `${target} ${window.kind === 'angle' ? '°' : unit}`,
    least,
    most,
  })
}

/** `Click 100 with Crowfoot, 101.6 mm at 0°`. */
export function heldText(words: Words, { wrench, adapter }: NonNullable<SheetPull['held']>): string {
  if (adapter === undefined) return wrench
  const { name, offset_nm, angle_deg } = adapter
  return words.sheet.run.held({
    wrench,
    adapter: name,
    offset: formatLength(nanometres(offset_nm), 'mm', 1),
    angle: formatAngle(degrees(angle_deg)),
  })
}
