import { clockFaults, type ClockFault, type RingPiston, type SetGap } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { angleAmount, parseAngle } from '../../quantity/index.ts'
import { readReason } from '../../tightening/index.ts'
import { askedRings, type AskedRings } from '../rings/asked-rings.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

type BuildAtRings = BuildAtStep<'fit-rings'>
const version = 1

/**
 * The rings of a piston are on, their gaps as the spec has them or where a person says. Refuses `piston-unknown`,
 * `rings-fitted-already`, `ring-unknown`, what `parseAngle` does, `angle-past-turn`, and what `clockFaults` finds.
 */
export function fitRings(at: BuildAtRings, command: CommandOf<'fit-rings'>): Events {
  const found = pistonAt(at, command)
  if (!found.ok) return found
  const { set, piston, fitted } = found.value
  if (fitted !== null) return refused('rings-fitted-already', { piston: piston.name.text })
  const { step, cylinder, others } = command
  for (const { ring } of others)
    if (!set.rings.some(({ id }) => id === ring))
      return refused('ring-unknown', { piston: piston.name.text, ring })
  const gaps: SetGap[] = []
  for (const { id, name, gapAt } of set.rings) {
    const typed = others.find((other) => other.ring === id)?.typed
    const angle = typed === undefined ? done(gapAt) : parseAngle(typed)
    if (!angle.ok) return angle
    if (angle.value < 0 || angle.value >= 360) return refused('angle-past-turn', { ring: name })
    gaps.push({ ring: id, degrees: angle.value })
  }
  const [fault] = clockFaults(set, gaps)
  return fault === undefined
    ? done([{ type: 'rings-fitted', version, step, cylinder, gaps }])
    : refusedFor(piston, fault)
}

/** Refuses `piston-unknown`, `rings-not-fitted` and `reason-missing`. */
export function takeOffRings(at: BuildAtRings, command: CommandOf<'take-off-rings'>): Events {
  const found = pistonAt(at, command)
  if (!found.ok) return found
  const { text: name } = found.value.piston.name
  if (found.value.fitted === null) return refused('rings-not-fitted', { piston: name })
  const reason = readReason(command.reason, { what: 'rings-taken-off', piston: name })
  if (!reason.ok) return reason
  const { step, cylinder } = command
  return done([{ type: 'rings-taken-off', version, step, cylinder, reason: reason.value }])
}

function refusedFor({ name: { text: piston } }: RingPiston, fault: ClockFault): Outcome<never> {
  const angles = { apart: angleAmount(fault.apart), least: angleAmount(fault.least) }
  if (fault.kind === 'in-line') {
    const [first, second] = fault.rings
    return refused('gaps-lie-in-line', { piston, first: first.name, second: second.name, ...angles })
  }
  return refused('gap-badly-placed', { piston, ring: fault.ring.name, where: fault.kind, ...angles })
}

function pistonAt(
  { spec, state, step }: BuildAtRings,
  { cylinder }: { readonly cylinder: number },
): Outcome<AskedRings> {
  const found = askedRings(spec, state, step).find(({ piston }) => piston.cylinder === cylinder)
  return found === undefined ? refused('piston-unknown', { step: step.name, cylinder }) : done(found)
}
