import type { TorqueUnit } from '../../../core/quantity/index.ts'
import type { PassKind } from '../../../core/spec/index.ts'
import type { Window } from '../../../core/tightening/index.ts'
import { showWindow } from '../../../core/tightening/index.ts'

/** What a pass is called in a heading. */
export const passName: { readonly [Kind in PassKind]: string } = {
  seat: 'seat by hand',
  torque: 'torque',
  angle: 'angle',
  loosen: 'loosen',
  recheck: 'recheck',
  action: 'between passes',
}

/** The unit that a window is read in: a torque in the wrench's unit, an angle in degrees. */
export function unitOf(window: Window, unit: TorqueUnit): TorqueUnit | '°' {
  return window.kind === 'angle' ? '°' : unit
}

/** `24 N·m` or `60°`. */
export function targetText(window: Window, unit: TorqueUnit): string {
  const { target } = showWindow(window, unit)
  return window.kind === 'angle' ? `${target}°` : `${target} ${unit}`
}
