import { done, problem, refused, type Outcome, type Problem } from '../../problem/index.ts'
import {
  newtonMetres,
  shortAmount,
  torqueAmount,
  type Torque,
  type TorqueUnit,
} from '../../quantity/index.ts'
import type { Amount, Span } from '../../words/index.ts'
import type { AcceptanceWindow } from '../reading/window.ts'
import { calibrationWarning } from './calibration.ts'
import { permittedDeviation } from './deviation.ts'
import { nearestMark, scaleShare, usableRange, type WrenchSetup } from './setting.ts'

export type TorqueWindow = Extract<AcceptanceWindow, { readonly kind: 'torque' }>

/** A wrench that can be set for a pull. */
export interface UsableWrench extends WrenchSetup {
  /** What the scale would have to show for the target to the last digit. */
  readonly exact: Torque
  /** The mark it is set to, and the same with as many decimals as tell one mark from the next. */
  readonly mark: Torque
  readonly setting: Amount
  /**
   * What the fastener gets of that mark, and how far it lies off the target, as a share of the target, above
   * or below 0.
   */
  readonly torque: Torque
  readonly rounding: number
  /**
   * By what share of what the fastener gets the wrench may show or click off it, either way: ISO 6789 measures the deviation
   * against the reference, not against the mark.
   */
  readonly deviation: number
  /** The torques that the fastener may end up with, rounding and deviation together. */
  readonly least: Torque
  readonly most: Torque
  /** Whether all of them are within the window. */
  readonly reach: 'within' | 'may-leave'
  /** What to know before using it all the same. */
  readonly warnings: readonly Problem[]
}

export interface RefusedWrench extends WrenchSetup {
  readonly problem: Problem
}

export interface WrenchChoice {
  /**
   * The best first: those whose calibration holds, then least off the target at worst, then nearest to the middle of its
   * range, then by name: a wrench nobody has calibrated lately may be further off than its class says.
   */
  readonly usable: readonly UsableWrench[]
  readonly refused: readonly RefusedWrench[]
  /** What to do when there is none, the best advice first; empty when there is one. */
  readonly advice: readonly Problem[]
}

/**
 * Which wrenches can be used for a pull, how to set them, and why the others cannot. `today` is the day at
 * the bench (`2026-03-31`). Limits that the spec does not give are no reason to warn.
 *
 * Refuses `wrench-target-zero`.
 */
export function usableFor(
  setups: readonly WrenchSetup[],
  window: TorqueWindow,
  today: string,
): Outcome<WrenchChoice> {
  if (window.target <= 0) return refused('wrench-target-zero', {})
  const usable: UsableWrench[] = []
  const unfit: RefusedWrench[] = []
  for (const setup of setups) {
    const set = settingOf(setup, window, today)
    if (set.ok) usable.push(set.value)
    else unfit.push({ ...setup, problem: set.problem })
  }
  usable.sort(
    (one, other) =>
      compare(doubts(one, today), doubts(other, today)) ||
      compare(largestDeviation(one, window), largestDeviation(other, window)) ||
      compare(offMiddle(one), offMiddle(other)) ||
      compare(one.wrench.name, other.wrench.name) ||
      compare(one.wrench.id, other.wrench.id),
  )
  return done({ usable, refused: unfit, advice: usable.length > 0 ? [] : adviceFor(window, unfit) })
}

function compare<Value extends number | string>(one: Value, other: Value): number {
  if (typeof one === 'number' && Math.abs(one - (other as number)) < 1e-9) return 0
  return one < other ? -1 : 1
}

function largestDeviation({ least, most }: UsableWrench, { target }: TorqueWindow): number {
  return Math.max(target - least, most - target)
}

/** 0 while the calibration holds, 1 where it is unknown or over. */
function doubts({ wrench }: UsableWrench, today: string): number {
  return calibrationWarning(wrench, today) === null ? 0 : 1
}

/** 0 in the middle of the usable range, 1 at either end. */
function offMiddle({ wrench, mark }: UsableWrench): number {
  const { from, upTo } = usableRange(wrench)
  return Math.abs(2 * mark - from - upTo) / (upTo - from)
}

/** How to set one wrench for a pull, or why it cannot be. */
function settingOf(setup: WrenchSetup, window: TorqueWindow, today: string): Outcome<UsableWrench> {
  const { wrench } = setup
  const { unit, step } = wrench.scale
  const share = scaleShare(setup)
  if (!share.ok) return share
  const exact = newtonMetres(window.target * share.value)
  const range = outsideRange(setup, exact)
  if (range !== null) return { ok: false, problem: range }

  const mark = nearestMark(wrench, exact)
  const torque = newtonMetres((mark ?? 0) / share.value)
  if (mark === null || outside({ least: torque, most: torque }, window))
    return { ok: false, problem: tooCoarse(setup, exact, window) }

  const deviation = permittedDeviation(wrench)
  const least = newtonMetres(torque / (1 + deviation))
  const most = newtonMetres(torque / (1 - deviation))
  const reach = outside({ least, most }, window) ? 'may-leave' : 'within'
  return done({
    ...setup,
    exact,
    mark,
    setting: torqueAmount(mark, unit, decimalsOf(step)),
    torque,
    rounding: torque / window.target - 1,
    deviation,
    least,
    most,
    reach,
    warnings: [
      reach === 'may-leave' && window.tolerance === 'spec' ? mayLeave(setup, { least, most }, window) : null,
      calibrationWarning(wrench, today),
    ].filter((warning) => warning !== null),
  })
}

/** As many as it takes to tell one mark from the next. */
function decimalsOf(step: number): number {
  const [, fraction = ''] = String(step).split('.')
  return Math.min(fraction.length, 6)
}

/** A billionth is left to binary rounding, as in `verdictOf`. */
function outside({ least, most }: Torques, window: TorqueWindow): boolean {
  const slack = window.target * 1e-9
  return least < window.least - slack || most > window.most + slack
}

function outsideRange({ wrench }: WrenchSetup, exact: Torque): Problem | null {
  const { name, range, statedMinimum, scale } = wrench
  const { from, upTo } = usableRange(wrench)
  const setting = { ...torqueAmount(exact, scale.unit), unit: '' }
  if (exact > upTo * (1 + 1e-9))
    return problem('wrench-above-range', { name, setting, ends: torqueAmount(upTo, scale.unit) })
  if (exact >= from * (1 - 1e-9)) return null
  const trusted = statedMinimum === undefined ? 'fifth' : 'stated'
  const below = exact < (statedMinimum ?? range.most / 5) ? trusted : 'mark'
  return problem('wrench-below-range', { name, setting, starts: torqueAmount(from, scale.unit), below })
}

function tooCoarse({ wrench }: WrenchSetup, exact: Torque, window: TorqueWindow): Problem {
  const { name, scale } = wrench
  return problem('wrench-steps-too-coarse', {
    name,
    setting: torqueAmount(exact, scale.unit),
    step: shortAmount(scale.step, scale.unit, 6),
    limits: spanOf(window, scale.unit),
  })
}

function mayLeave({ wrench }: WrenchSetup, reach: Torques, window: TorqueWindow): Problem {
  const { name, scale } = wrench
  return problem('wrench-may-leave-window', {
    name,
    reach: spanOf(reach, scale.unit),
    limits: spanOf(window, scale.unit),
  })
}

interface Torques {
  readonly least: Torque
  readonly most: Torque
}

function spanOf({ least, most }: Torques, unit: TorqueUnit): Span {
  return { from: { ...torqueAmount(least, unit), unit: '' }, upTo: torqueAmount(most, unit) }
}

/** Both ends of what full scale may be for the target to lie between a fifth of it and all of it. */
function adviceFor({ target }: TorqueWindow, unfit: readonly RefusedWrench[]): readonly Problem[] {
  const unit = unfit[0]?.wrench.scale.unit ?? 'N·m'
  const shown = (torque: number) => torqueAmount(newtonMetres(torque), unit)
  const other = problem('no-wrench-fits', {
    target: shown(target),
    from: shown(target),
    to: shown(5 * target),
  })
  const someTooLarge = unfit.some(({ problem }) => problem.code === 'wrench-below-range')
  return someTooLarge ? [other, problem('choking-up', {})] : [other]
}
