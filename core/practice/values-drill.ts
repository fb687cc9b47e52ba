import type { EngineSpec, Procedure } from '../engine/index.ts'
import {
  benchTorqueUnits,
  formatNumber,
  newtonMetres,
  torqueIn,
  torqueOf,
  type BenchTorqueUnit,
  type Torque,
} from '../quantity/index.ts'
import {
  plannedIn,
  scaleShare,
  showWindow,
  usableFor,
  windowOf,
  type TorqueWindow,
  type UsableWrench,
  type WrenchSetup,
} from '../tightening/index.ts'
import { Chance } from './chance.ts'

/** A number on a scale, as it is set. */
export interface ScaleValue {
  readonly number: string
  readonly unit: UsableWrench['wrench']['scale']['unit']
}

/** The pull that the questions are about. */
export interface AskedPull {
  readonly procedure: Procedure
  readonly pass: number
  readonly fastener: string
  readonly window: TorqueWindow
}

/**
 * `value`: what the pass asks for. `unit`: the same on a scale of another unit. `wrench`: which of some can be used, the last
 * choice being none of them. `setting`: what one of them is set to. `key` has the places of the right choices, at least one.
 */
export type ValuesQuestion =
  | {
      readonly kind: 'value' | 'unit'
      readonly choices: readonly ScaleValue[]
      readonly key: readonly number[]
    }
  | {
      readonly kind: 'wrench'
      readonly choices: readonly (WrenchSetup | null)[]
      readonly key: readonly number[]
    }
  | {
      readonly kind: 'setting'
      readonly setup: WrenchSetup
      readonly choices: readonly ScaleValue[]
      readonly key: readonly number[]
    }

export interface ValuesDrill extends AskedPull {
  /** At least one. */
  readonly questions: readonly ValuesQuestion[]
}

const mostWrenches = 5
const mostValues = 4

/**
 * Questions about one torque of the engine, in the unit of the bench, and the wrenches for it. Null where no pass has a torque.
 * `today` is the day at the bench, `2026-03-31`.
 */
export function valuesDrill(
  spec: EngineSpec,
  seed: string,
  setups: readonly WrenchSetup[],
  unit: BenchTorqueUnit,
  today: string,
): ValuesDrill | null {
  const chance = new Chance(seed)
  const pulls = torquePulls(spec)
  if (pulls.length === 0) return null
  const pull = chance.one(pulls)
  return {
    ...pull,
    questions: [
      valueQuestion(chance, pull, unit),
      unitQuestion(chance, pull, unit),
      ...wrenchQuestions(chance, pull, setups, today),
    ],
  }
}

/** The first fastener of each torque that a pass asks for. */
function torquePulls(spec: EngineSpec): readonly AskedPull[] {
  return spec.procedures.flatMap((procedure) =>
    procedure.passes.flatMap((wanted, pass) => {
      if (wanted.kind !== 'torque' && wanted.kind !== 'recheck') return []
      const byTorque = plannedIn(procedure, pass).flatMap(({ fastener }) => {
        const window = fastener === null ? null : windowOf(wanted, fastener)
        return fastener !== null && window?.kind === 'torque' && window.target > 0
          ? [{ fastener, window }]
          : []
      })
      const byTarget = Map.groupBy(byTorque, ({ window }) => window.target)
      return [...byTarget.values()].map(([first]) => ({ procedure, pass, ...first! }))
    }),
  )
}

function shown(torque: Torque, unit: BenchTorqueUnit): ScaleValue {
  const window = { kind: 'torque', target: torque, least: torque, most: torque, tolerance: 'spec' } as const
  return { number: String(showWindow(window, unit).target), unit }
}

/** The value in its unit, the same number in units that are mistaken for it, and the values of other passes. */
function valueQuestion(
  chance: Chance,
  { procedure, pass, window }: AskedPull,
  unit: BenchTorqueUnit,
): ValuesQuestion {
  const right = shown(window.target, unit)
  const sameNumber = (['lbf·ft', 'lbf·in', 'N·m'] as const)
    .filter((other) => other !== unit)
    .map((other) => ({ number: right.number, unit: other }))
  const others = procedure.passes.flatMap((each, place) =>
    place !== pass && (each.kind === 'torque' || each.kind === 'recheck') ? [shown(each.target, unit)] : [],
  )
  return {
    kind: 'value',
    ...withTraps(chance, right, [...chance.shuffled(others).slice(0, 2), ...sameNumber]),
  }
}

/** On a scale in another unit: with the number of the wrong unit, twelve times too much or too little, or not converted. */
function unitQuestion(chance: Chance, { window }: AskedPull, unit: BenchTorqueUnit): ValuesQuestion {
  const scale = chance.one((['lbf·in', 'lbf·ft', 'N·m'] as const).filter((each) => each !== unit))
  const right = shown(window.target, scale)
  const confused = benchTorqueUnits
    .filter((each) => each !== scale)
    .map((each) => ({ number: shown(window.target, each).number, unit: scale }))
  const inverse = shown(torqueOf(window.target, scale), 'N·m')
  return { kind: 'unit', ...withTraps(chance, right, [...confused, { number: inverse.number, unit: scale }]) }
}

function wrenchQuestions(
  chance: Chance,
  { window }: AskedPull,
  setups: readonly WrenchSetup[],
  today: string,
): readonly ValuesQuestion[] {
  const choice = usableFor(setups, window, today)
  if (!choice.ok || setups.length === 0) return []
  const { usable, refused } = choice.value
  const [some, unfit] = [chance.shuffled(usable).slice(0, 2), chance.shuffled(refused)]
  const listed = chance.shuffled<WrenchSetup>([...some, ...unfit.slice(0, mostWrenches - some.length)])
  const choices = [...listed.map(({ wrench, adapter }) => ({ wrench, adapter })), null]
  const right = listed.flatMap((each, place) => (usable.includes(each as UsableWrench) ? [place] : []))
  const wrench: ValuesQuestion = {
    ...{ kind: 'wrench', choices },
    key: right.length === 0 ? [choices.length - 1] : right,
  }
  const set = some.find(({ adapter }) => adapter !== null) ?? some[0]
  return set === undefined ? [wrench] : [wrench, settingQuestion(chance, set, window)]
}

/** Set as if there were no adapter, corrected the wrong way round, and by the number of another unit. */
function settingQuestion(chance: Chance, set: UsableWrench, window: TorqueWindow): ValuesQuestion {
  const { unit } = set.wrench.scale
  const number = formatNumber(set.setting.amount, set.setting.decimals)
  const right = { number, unit }
  const onScale = (torque: Torque): ScaleValue => ({
    number: String(Math.round(torqueIn(torque, unit) / set.wrench.scale.step) * set.wrench.scale.step),
    unit,
  })
  const share = scaleShare(set)
  const traps = [
    ...(share.ok && set.adapter !== null
      ? [onScale(window.target), onScale(newtonMetres(window.target / share.value))]
      : []),
    ...benchTorqueUnits
      .filter((each) => each !== unit)
      .map((each) => ({ number: shown(window.target, each).number, unit })),
  ]
  const { wrench, adapter } = set
  return { kind: 'setting', setup: { wrench, adapter }, ...withTraps(chance, right, traps) }
}

/** The right value among wrong ones that differ from it and from each other by more than a fiftieth. */
function withTraps(chance: Chance, right: ScaleValue, traps: readonly ScaleValue[]) {
  const torque = ({ number, unit }: ScaleValue) => torqueOf(Number(number), unit)
  const apart: ScaleValue[] = [right]
  for (const trap of traps) {
    const isNew = apart.every((each) => Math.abs(torque(each) - torque(trap)) > 0.02 * torque(each))
    if (isNew && torque(trap) > 0 && apart.length < mostValues) apart.push(trap)
  }
  const choices = chance.shuffled(apart)
  return { choices, key: [choices.indexOf(right)] }
}

/** What the fastener gets where a wrench is set to a value; null where its adapter has no answer. */
export function torqueGiven(setup: WrenchSetup | null, { number, unit }: ScaleValue): Torque | null {
  const set = torqueOf(Number(number), unit)
  if (setup === null) return set
  const share = scaleShare(setup)
  return share.ok ? newtonMetres(set / share.value) : null
}
