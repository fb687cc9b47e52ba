import type { Amount } from '../../words/index.ts'
import { newtonMetres, torqueAmount, type Torque } from '../../quantity/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import { doubt, type Finding } from '../finding.ts'
import { pullsOf, type Pull } from './pulls.ts'

/** The narrowest limits that the best wrenches keep, as a share of the value to either side. Common practice, no source. */
const finestTorqueStep = 0.01

/** What the wrenches of a workshop read, in N·m. Common practice, no source. */
const usualWrenches = { least: 1, most: 1500 } as const

/** Values that no wrench reads or keeps, and a small thread with a large one's torque. */
export function auditValues(spec: EngineSpec): readonly Finding[] {
  const pulls = pullsOf(spec)
  return [
    ...pulls.flatMap((pull) => auditScale(pull)),
    ...pulls.flatMap((pull) => auditSpread(pull)),
    ...[...Map.groupBy(pulls, ({ procedure, pass }) => `${procedure} ${pass}`).values()].flatMap((inPass) =>
      inPass.flatMap((pull) => auditSize(pull, inPass)),
    ),
  ]
}

function auditScale({ procedure, pass, target, path }: Pull): readonly Finding[] {
  if (target >= usualWrenches.least && target <= usualWrenches.most) return []
  return [doubt('no-usual-wrench', { procedure, pass, torque: torqueAmount(target, 'N·m', 2) }, path)]
}

function auditSpread({ target, least, most, path, ...pull }: Pull): readonly Finding[] {
  const sides = [least, most].flatMap((limit) => (limit === undefined ? [] : Math.abs(limit - target)))
  // A limit on the target itself gives all its room to the other side.
  const spread = sides.length === 2 && sides.includes(0) ? Math.max(...sides) / 2 : Math.min(...sides)
  if (sides.length === 0 || spread >= finestTorqueStep * target) return []
  const facts = {
    procedure: pull.procedure,
    pass: pull.pass,
    torque: inNewtonMetres(target),
    spread: torqueAmount(newtonMetres(spread), 'N·m', 2),
  }
  return [doubt('tolerance-too-fine', facts, path)]
}

function auditSize(small: Pull, inPass: readonly Pull[]): readonly Finding[] {
  if (!small.last) return []
  const large = inPass.find(
    ({ target, group }) => target === small.target && group.thread.diameter > small.group.thread.diameter,
  )
  if (large === undefined) return []
  const facts = {
    procedure: small.procedure,
    pass: small.pass,
    torque: inNewtonMetres(small.target),
    small: small.group.name,
    large: large.group.name,
  }
  return [doubt('same-torque-for-small', facts, small.path)]
}

function inNewtonMetres(torque: Torque): Amount {
  return torqueAmount(torque, 'N·m')
}
