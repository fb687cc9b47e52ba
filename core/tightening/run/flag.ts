import { problem, textIn, type Phrase, type Problem } from '../../problem/index.ts'
import type { Amount, Span, Words } from '../../words/index.ts'
import {
  degrees,
  angleAmount,
  lengthAmount,
  lengthOf,
  shortAmount,
  torqueAmount,
  torqueOf,
  type Angle,
  type Torque,
} from '../../quantity/index.ts'
import type { EngineSpec, Procedure } from '../../engine/index.ts'
import type { Reading } from './events.ts'
import { numberOf } from '../order/fastener-number.ts'
import { isJump } from '../reading/turning.ts'
import { turningAmount } from '../reading/turning-amount.ts'
import { capToLookAt, turningTorque } from './turned-before.ts'
import type { Flag, Run } from './run.ts'
import { isLengthUnit, isTorqueUnit, suspectedUnit } from '../reading/reading.ts'
import { turnedIn } from '../reading/short-turn.ts'
import { stretchOutcome, torqueRead } from '../reading/stretch.ts'
import { remedyOf } from './flag-remedy.ts'
import { lengthSpan, limitsSpan, windowOf } from '../reading/window.ts'

/**
 * What a flag says to the person, for `sentenceOf`: the reading against its limits and the unit it may have
 * been meant in, the fastener that moved, the problem in the person's own words.
 */
export function flagProblem(spec: EngineSpec, procedure: Procedure, run: Run, flag: Flag): Problem {
  const fastener = numberOf(spec, flag.fastener)
  switch (flag.about) {
    case 'problem':
      return problem('problem-noted', { fastener, text: flag.text ?? '' })
    case 'moved':
      return problem('fastener-moved', { fastener })
    case 'under':
    case 'over': {
      const stretched = stretchedFacts(procedure, run, flag)
      if (stretched !== null) {
        const { code, facts } = stretched
        if (code === 'stretch-torque' && remedyOf(spec, procedure, run, flag) === 'replace')
          return problem('stretch-torque-replace', { fastener, ...facts })
        return problem(code, { fastener, ...facts })
      }
      const turned = turnedFacts(spec, procedure, run, flag)
      if (turned !== null)
        return flag.about === 'over' ? problem('turning-over', turned) : problem('turning-under', turned)
      const outside = outsideFacts(procedure, run, flag)
      const left = leftToTurn(procedure, run, flag)
      if (left !== null)
        return problem('turn-short', { fastener, read: outside.read, limits: outside.limits, ...left })
      const remedy = remedyOf(spec, procedure, run, flag)
      if (flag.about === 'over' && remedy === 'begin-again')
        return problem('reading-over-begin-again', { fastener, ...outside })
      if (flag.about === 'over' && remedy === 'replace')
        return problem('reading-over-replace', { fastener, ...outside })
      if (flag.about === 'under' && isMeasured(procedure, run, flag))
        return problem('length-under', { fastener, ...outside })
      return problem(flag.about === 'under' ? 'reading-under' : 'reading-over', { fastener, ...outside })
    }
    default:
      return flag.about satisfies never
  }
}

/** The same in a few words, for a note at the fastener: `reads 18 N·m, 22.8 to 25.2`. */
export function flagInShort(words: Words, procedure: Procedure, run: Run, flag: Flag): string {
  switch (flag.about) {
    case 'problem':
      return flag.text ?? ''
    case 'moved':
      return words.flags.moved
    case 'under':
    case 'over': {
      const { read, limits } = outsideFacts(procedure, run, flag)
      const facts = { read: textIn(words, words.phrases, read), limits: words.amounts.span(limits) }
      return flag.fastener === null ? words.flags.measured(facts) : words.flags.reads(facts)
    }
    default:
      return flag.about satisfies never
  }
}

/** What there is to say of one that is tightened until it is so much longer; null for any other flag. */
function stretchedFacts(procedure: Procedure, run: Run, flag: Flag) {
  const pull = run.pulls.find(({ number }) => number === flag.pull)
  const pass = pull && procedure.passes[pull.pass]
  const window = pull && pass ? windowOf(pass, pull.fastener) : null
  if (window?.kind !== 'length' || window.torque === undefined) return null
  if (!pull?.torque || pull.stretch === null || !isTorqueUnit(pull.torque.unit)) return null
  const outcome = stretchOutcome(window, pull.stretch, torqueRead(pull.torque))
  const lengthUnit = pull.reading && isLengthUnit(pull.reading.unit) ? pull.reading.unit : 'mm'
  const torqueLimits = limitsSpan(window.torque, pull.torque.unit)
  const facts = {
    stretch: lengthAmount(pull.stretch, lengthUnit),
    limits: lengthSpan(window, lengthUnit),
    torque: scaleReading(pull.torque),
    torqueLimits,
    mostTorque: { ...torqueLimits.upTo, unit: pull.torque.unit },
  }
  if (outcome === 'too-long') return { code: 'stretch-too-long', facts } as const
  if (outcome === 'short') return { code: 'stretch-short', facts } as const
  return { code: 'stretch-torque', facts: { ...facts, tooMuch: outcome === 'at-most-torque' } } as const
}

/** What there is to say of what it took to turn the crank; null for any other flag. */
function turnedFacts(spec: EngineSpec, procedure: Procedure, run: Run, flag: Flag) {
  const pull = run.pulls.find(({ number }) => number === flag.pull)
  const pass = pull && procedure.passes[pull.pass]
  const window = pull && pass ? windowOf(pass, pull.fastener) : null
  const torque = pull && turningTorque(pull)
  if (window?.kind !== 'turning' || !pull || torque === null || torque === undefined) return null
  const shown = (value: Torque | null) => (value === null ? null : turningAmount(value, window.unit))
  const { least, most, mostRise } = window
  const limits = {
    least: shown(least),
    most: shown(most),
    mostRise: shown(mostRise),
    rise: shown(pull.turning?.rise ?? null),
  }
  const id = isJump(mostRise, pull.turning?.rise ?? null) ? pull.cap : capToLookAt(run)
  const fasteners = procedure.caps?.find((cap) => cap.id === id)?.fasteners
  const lookAt =
    id === null || fasteners === undefined
      ? null
      : { cap: id, fasteners: fasteners.map((each) => numberOf(spec, each) ?? each) }
  return { cap: pull.cap, read: turningAmount(torque, window.unit), limits, lookAt }
}

/** What is left of a turn that came short, and between what; null for any other flag. */
function leftToTurn(procedure: Procedure, run: Run, { about, pull: number }: Flag) {
  const pull = run.pulls.find((each) => each.number === number)
  const pass = pull && procedure.passes[pull.pass]
  const window = pull && pass ? windowOf(pass, pull.fastener) : null
  if (about !== 'under' || !pull || window?.kind !== 'angle' || pull.reading === null) return null
  const left = (angle: Angle) => angleAmount(degrees(Math.max(0, angle - turnedIn(pull))))
  return { left: left(window.target), from: left(window.least), to: left(window.most) }
}

/** Whether a flag is about a measured length: nothing is pulled to it, so nothing is pulled again. */
function isMeasured(procedure: Procedure, run: Run, flag: Flag): boolean {
  const pull = run.pulls.find(({ number }) => number === flag.pull)
  const pass = pull && procedure.passes[pull.pass]
  return pull !== undefined && pass !== undefined && windowOf(pass, pull.fastener)?.kind === 'length'
}

function outsideFacts(
  procedure: Procedure,
  run: Run,
  flag: Flag,
): { readonly read: Phrase; readonly limits: Span; readonly otherUnit: string | null } {
  const pull = run.pulls.find(({ number }) => number === flag.pull)
  const pass = pull && procedure.passes[pull.pass]
  const window = pull && pass ? windowOf(pass, pull.fastener) : null
  if (!pull?.reading || window === null || window.kind === 'free-length')
    throw new Error(`flag ${flag.number} has no reading`)
  const { unit, value } = pull.reading
  if (window.kind === 'length') {
    const lengthUnit = isLengthUnit(unit) ? unit : 'mm'
    const read = lengthAmount(pull.stretch ?? lengthOf(value, lengthUnit), lengthUnit)
    return { read: readAs(read), limits: lengthSpan(window, lengthUnit), otherUnit: null }
  }
  if (window.kind === 'turning') {
    const { most, least, mostRise } = window
    const limit = most ?? least ?? mostRise
    const upTo = limit === null ? shortAmount(0, unit, 0) : turningAmount(limit, window.unit)
    return { read: scaleReading(pull.reading), limits: { from: null, upTo }, otherUnit: null }
  }
  if (window.kind === 'angle') {
    const angle = angleAmount(turnedIn(pull))
    const read: Phrase = pull.from > 0 ? { code: 'angleInAll', facts: { angle } } : readAs(angle)
    return { read, limits: limitsSpan(window, 'N·m'), otherUnit: null }
  }
  return {
    read: scaleReading(pull.reading),
    limits: limitsSpan(window, isTorqueUnit(unit) ? unit : 'N·m'),
    otherUnit: suspectedUnit(window, pull.reading),
  }
}

/**
 * `30 lbf·ft`, and with an adapter `30 lbf·ft on the scale, 40 lbf·ft at the fastener`; less what it took to run down, where that
 * goes on top.
 */
export function scaleText(words: Words, reading: Reading): string {
  return textIn(words, words.phrases, scaleReading(reading))
}

function scaleReading({ value, unit, atFastener, clamping }: Reading): Phrase {
  const amount = (torque: number | undefined) =>
    torque === undefined || !isTorqueUnit(unit) ? null : torqueAmount(torqueOf(torque, unit), unit)
  return readAs(shortAmount(value, unit, 6), amount(atFastener), amount(clamping))
}

function readAs(onScale: Amount, atFastener: Amount | null = null, clamping: Amount | null = null): Phrase {
  return { code: 'reading', facts: { onScale, atFastener, clamping } }
}
