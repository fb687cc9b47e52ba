import { formatTorque, newtonMetres, type Torque } from '../../quantity/index.ts'
import type { EngineSpec } from '../schema.ts'
import { doubt, type Finding } from './finding.ts'
import { pullsOf, type Pull } from './pulls.ts'

/** The narrowest limits that the best wrenches keep, as a share of the value to either side. Common practice, no source. */
const finest = 0.01

/** Values that are unlikely beside one another: a small thread with a large one's torque, limits that no wrench keeps. */
export function auditValues(spec: EngineSpec): readonly Finding[] {
  const pulls = pullsOf(spec)
  return [...pulls.flatMap((pull) => auditSpread(pull)), ...pulls.flatMap((pull) => auditSize(pull, pulls))]
}

function auditSpread({ target, least, most, path, ...pull }: Pull): readonly Finding[] {
  const sides = [least, most].flatMap((limit) => (limit === undefined ? [] : Math.abs(limit - target)))
  // A limit on the target itself gives all its room to the other side.
  const spread = sides.length === 2 && sides.includes(0) ? Math.max(...sides) / 2 : Math.min(...sides)
  if (sides.length === 0 || spread >= finest * target) return []
  const facts = {
    procedure: pull.procedure,
    pass: pull.pass,
    torque: inNewtonMetres(target),
    spread: formatTorque(newtonMetres(spread), 'N·m', 2),
  }
  return [doubt('tolerance-too-fine', facts, path)]
}

function auditSize(small: Pull, pulls: readonly Pull[]): readonly Finding[] {
  const large = pulls.find(
    (other) =>
      other.procedure === small.procedure &&
      other.pass === small.pass &&
      other.target === small.target &&
      other.group.thread.diameter > small.group.thread.diameter,
  )
  if (large === undefined || !small.last) return []
  const facts = {
    procedure: small.procedure,
    pass: small.pass,
    torque: inNewtonMetres(small.target),
    small: small.group.name,
    large: large.group.name,
  }
  return [doubt('same-torque-for-small', facts, small.path)]
}

function inNewtonMetres(torque: Torque): string {
  return formatTorque(torque, 'N·m')
}
