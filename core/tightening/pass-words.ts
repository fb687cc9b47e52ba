import { formatThread } from '../joint/index.ts'
import { formatAngle, type LengthUnit, type BenchTorqueUnit } from '../quantity/index.ts'
import type { EngineSpec, FastenerGroup, Pass, PassKind } from '../engine/index.ts'
import { en } from '../words/index.ts'
import { numberOf } from './fastener-number.ts'
import { showLengths, showWindow, windowOf, type AcceptanceWindow } from './window.ts'

/** What the bench reads its scales in. */
export interface Units {
  readonly torque: BenchTorqueUnit
  readonly length: LengthUnit
}

/** What a pass is called in a heading. */
export const passName: { readonly [Kind in PassKind]: string } = en.passes.kinds

/** `M10 × 1.25, 10.9, oiled`, `3/8-16 UNC, SAE 8, dry`. */
export function threadText({ thread, propertyClass, threadState }: FastenerGroup): string {
  const state = en.engineParts.threadStates[threadState]
  return `${formatThread(thread).replace('×', ' × ')}, ${propertyClass}, ${state}`
}

/** The unit that a window is read in. */
export function unitOf(window: AcceptanceWindow, units: Units): BenchTorqueUnit | LengthUnit | '°' {
  switch (window.kind) {
    case 'torque':
      return units.torque
    case 'angle':
      return '°'
    case 'length':
    case 'free-length':
      return units.length
    default:
      return window satisfies never
  }
}

/** `24 N·m`, `60°`, `0.1 mm to 0.25 mm`. */
export function targetText(window: AcceptanceWindow, units: Units): string {
  switch (window.kind) {
    case 'torque':
      return `${showWindow(window, units.torque).target} ${units.torque}`
    case 'angle':
      return `${showWindow(window, units.torque).target}°`
    case 'length':
      return showLengths(window, units.length)
    case 'free-length':
      return `measured in ${units.length}`
    default:
      return window satisfies never
  }
}

/** `24 N·m (22.8 to 25.2)`, or as `targetText` where that says the limits already. */
export function targetAndLimits(window: AcceptanceWindow, units: Units): string {
  const text = targetText(window, units)
  if (window.kind !== 'torque' && window.kind !== 'angle') return text
  const { least, most } = showWindow(window, units.torque)
  return `${text} (${least} to ${most}${window.tolerance === 'usual' ? ', usual limits' : ''})`
}

/** A pass in one line with all its values: `torque, 110 lbf·ft; 2, 4, 6: 100 lbf·ft`. `value` writes each of them. */
export function passText(spec: EngineSpec, pass: Pass, units: Units, value = targetText): string {
  if (pass.kind === 'action') {
    const window = windowOf(pass, null)
    return window === null ? pass.instruction : `${pass.instruction} ${value(window, units)}`
  }
  const window = windowOf(pass, null)
  const name = pass.kind === 'seat' && window !== null ? `${passName.seat}, gap` : passName[pass.kind]
  const base = window === null ? name : `${name}, ${value(window, units)}`
  const others = 'others' in pass ? (pass.others ?? []) : []
  const own = others.map(({ fasteners }) => {
    const [first] = fasteners
    const theirs = windowOf(pass, first ?? null)
    return `${numbersText(spec, fasteners)}: ${theirs === null ? '' : value(theirs, units)}`
  })
  const only = pass.kind === 'recheck' && pass.only ? [`only ${numbersText(spec, pass.only)}`] : []
  const repeated = pass.kind === 'recheck' && pass.repeat ? ['again until none moves'] : []
  const inAll = pass.kind === 'angle' && pass.inAll !== undefined ? [`${formatAngle(pass.inAll)} in all`] : []
  return [base, ...inAll, ...own, ...only, ...repeated].join('; ')
}

const mostNumbers = 8

function numbersText(spec: EngineSpec, fasteners: readonly string[]): string {
  const numbers = fasteners.map((id) => numberOf(spec, id))
  return numbers.length <= mostNumbers
    ? numbers.join(', ')
    : `${numbers.slice(0, mostNumbers).join(', ')} … (${numbers.length})`
}
