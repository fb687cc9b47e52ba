import { isolated } from '../../core/problem/index.ts'
import type { Clearance } from '../../core/bearing/index.ts'
import type { BuildSheet, SheetPull } from '../../core/builds/index.ts'
import {
  degrees,
  formatAngle,
  formatLength,
  formatNumber,
  inMicrometres,
  nanometres,
} from '../../core/quantity/index.ts'
import type { TorqueUnit } from '../../core/quantity/index.ts'
import { isTorqueUnit, showLengths, showWindow } from '../../core/tightening/index.ts'
import { dayAndTime } from '../parts/time.ts'

type Stamp = NonNullable<BuildSheet['started']>

/** `2026-03-14 09:05:12, A. Weller`; a dash for what has not happened. */
export function stampText(stamp: Stamp | null): string {
  return stamp ? `${dayAndTime(stamp.at)}, ${isolated(stamp.person)}` : '–'
}

const micrometres = (length: Clearance['least']) => formatNumber(inMicrometres(length), 0)

export function clearanceText(clearance: Clearance | null): string {
  if (!clearance) return 'not computed'
  return `${micrometres(clearance.nominal)} µm (${micrometres(clearance.least)} to ${micrometres(clearance.most)})`
}

export function rangeText({ least, most }: { least: Clearance['least']; most: Clearance['most'] }): string {
  return `${micrometres(least)} to ${micrometres(most)} µm`
}

/** Target and limits of a pull in the unit that was read, else in the bench's: `24 N·m (22.8 to 25.2)`. */
export function windowText({ window, reading }: SheetPull, benchUnit: TorqueUnit): string {
  if (!window || window.kind === 'free-length') return ''
  if (window.kind === 'length') return showLengths(window, reading?.unit === 'in' ? 'in' : 'mm')
  const unit = reading && isTorqueUnit(reading.unit) ? reading.unit : benchUnit
  const shown = showWindow(window, unit)
  return `${shown.target} ${window.kind === 'angle' ? '°' : unit} (${shown.least} to ${shown.most})`
}

/** `Click 100 with Crowfoot, 101.6 mm at 0°`. */
export function heldText({ wrench, adapter }: NonNullable<SheetPull['held']>): string {
  if (adapter === undefined) return wrench
  const { name, offset_nm, angle_deg } = adapter
  return `${wrench} with ${name}, ${formatLength(nanometres(offset_nm), 'mm', 1)} at ${formatAngle(degrees(angle_deg))}`
}

export const verdictWords: { readonly [Each in SheetPull['verdict']]: string } = {
  unread: 'confirmed, not read',
  within: 'within',
  under: '! under',
  over: '! over',
  moved: '! moved',
}

export const correctionWords: { readonly [Each in BuildSheet['corrections'][number]['kind']]: string } = {
  'pull-taken-back': 'pull taken back',
  'pull-read-again': 'pull read again',
  'fastener-loosened': 'fastener loosened',
  'fastener-replaced': 'fastener replaced',
  'run-restarted': 'run begun again',
  'half-taken-out': 'half taken out',
  'part-taken-out': 'part taken out',
  'bead-wiped-off': 'bead wiped off',
  'marks-noted-again': 'marks noted again',
  'shells-chosen-again': 'shells chosen again',
  'check-answered-again': 'check answered again',
  'readings-noted-again': 'measured again',
  'readings-withdrawn': 'readings withdrawn',
  'step-sent-back': 'sent back',
}

/** Why a pull that is printed does not count. */
export const setAsideWords: { readonly [Each in NonNullable<SheetPull['setAside']>]: string } = {
  loosened: 'no longer counts: the fastener was loosened',
  'pass-repeated': 'no longer counts: the pass was gone through again',
  'run-restarted': 'no longer counts: the run was begun again',
}
