import { formatThread } from '../joint/index.ts'
import { angleAmount, type LengthUnit, type BenchTorqueUnit, type TorqueUnit } from '../quantity/index.ts'
import type { EngineSpec, FastenerGroup, Pass } from '../engine/index.ts'
import type { Words } from '../words/index.ts'
import { numberOf } from './order/fastener-number.ts'
import { turningText } from './reading/turning-amount.ts'
import {
  lengthSpan,
  limitsSpan,
  shownAmount,
  showWindow,
  windowOf,
  type AcceptanceWindow,
  type PullWindow,
} from './reading/window.ts'

/** What the bench reads its scales in. */
export interface Units {
  readonly torque: BenchTorqueUnit
  readonly length: LengthUnit
}

/** `M10 × 1.25, 10.9, oiled`, `3/8-16 UNC, SAE 8, dry`; the pitch with the decimal mark of the language. */
export function threadText(words: Words, { thread, propertyClass, threadState }: FastenerGroup): string {
  const state = words.engineParts.threadStates[threadState]
  const designation = words.pullInputs.values.thread({ designation: formatThread(thread) })
  return `${designation.replace('×', ' × ')}, ${propertyClass}, ${state}`
}

/** The unit that a window is read in. */
export function unitOf(window: AcceptanceWindow, units: Units): TorqueUnit | LengthUnit | '°' {
  switch (window.kind) {
    case 'torque':
      return units.torque
    // As the manual prints it: it is far below what the wrenches of the bench read.
    case 'turning':
      return window.unit
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
export function targetText(words: Words, window: AcceptanceWindow, units: Units): string {
  switch (window.kind) {
    case 'torque':
      return words.amounts.amount(shownAmount(showWindow(window, units.torque).target, units.torque))
    case 'angle':
      return words.amounts.amount(shownAmount(showWindow(window, units.torque).target, '°'))
    case 'length':
      return words.amounts.span(lengthSpan(window, units.length))
    case 'free-length':
      return words.passes.measuredIn({ unit: units.length })
    case 'turning':
      return turningText(words, window)
    default:
      return window satisfies never
  }
}

/** `24 N·m (22.8 to 25.2)`, or as `targetText` where that says the limits already. */
export function targetAndLimits(words: Words, window: AcceptanceWindow, units: Units): string {
  const text = targetText(words, window, units)
  if (window.kind !== 'torque' && window.kind !== 'angle') return text
  const limits = words.amounts.span(limitsSpan(window, units.torque))
  return words.passes.withLimits({ target: text, limits, isUsual: window.tolerance === 'usual' })
}

/** A pass in one line with all its values: `torque, 110 lbf·ft; 2, 4, 6: 100 lbf·ft`. `value` writes each of them. */
export function passText(
  words: Words,
  spec: EngineSpec,
  pass: Pass,
  units: Units,
  value = targetText,
): string {
  const { passes } = words
  if (pass.kind === 'action') {
    const window = windowOf(pass, null)
    const wait = pass.waitMinutes === undefined ? [] : [words.passes.wait({ minutes: pass.waitMinutes })]
    const { instruction } = pass
    const asked =
      window === null ? instruction : passes.toRead({ instruction, limits: value(words, window, units) })
    return [asked, ...wait].join(' ')
  }
  const window = windowOf(pass, null)
  const name = pass.kind === 'seat' && window !== null ? passes.seatWithGap : passes.kinds[pass.kind]
  const base = window === null ? name : `${name}, ${value(words, window, units)}`
  const others = 'others' in pass ? (pass.others ?? []) : []
  const own = others.map(({ fasteners }) => {
    const [first] = fasteners
    const theirs = windowOf(pass, first ?? null)
    return `${numbersText(spec, fasteners)}: ${theirs === null ? '' : value(words, theirs, units)}`
  })
  const only =
    pass.kind === 'recheck' && pass.only ? [passes.only({ numbers: numbersText(spec, pass.only) })] : []
  const repeated = pass.kind === 'recheck' && pass.repeat ? [passes.untilNoneMoves] : []
  const step = pass.step === undefined ? [] : [words.passes.step(pass.step)]
  const atTorque =
    window?.kind === 'length' && window.torque !== undefined
      ? [atTorqueText(words, window.torque, units.torque)]
      : []
  const inAll =
    pass.kind === 'angle' && pass.inAll !== undefined
      ? [passes.inAll({ angle: words.amounts.amount(angleAmount(pass.inAll)) })]
      : []
  return [base, ...step, ...atTorque, ...inAll, ...own, ...only, ...repeated].join('; ')
}

/** `at 60 to 90 lbf·ft`: of a fastener that is tightened until it is so much longer. */
export function atTorqueText(words: Words, torque: PullWindow, unit: TorqueUnit): string {
  return words.passes.atTorque({ limits: words.amounts.span(limitsSpan(torque, unit)), unit })
}

const mostNumbers = 8

function numbersText(spec: EngineSpec, fasteners: readonly string[]): string {
  const numbers = fasteners.map((id) => numberOf(spec, id))
  return numbers.length <= mostNumbers
    ? numbers.join(', ')
    : `${numbers.slice(0, mostNumbers).join(', ')} … (${numbers.length})`
}
