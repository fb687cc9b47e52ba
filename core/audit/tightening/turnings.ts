import type { Phrase } from '../../problem/index.ts'
import { shortAmount, torqueIn, type Torque } from '../../quantity/index.ts'
import { writtenAt, type EngineSpec, type TurningTorque } from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'
import { auditPair } from '../bearings/limits.ts'

/** What the crank may take to turn: limits that agree with each other, and one thing to read at a time. */
export function auditTurnings(spec: EngineSpec): readonly Finding[] {
  return [
    ...spec.steps.flatMap((step, index) =>
      step.kind === 'turn' && step.turning !== undefined
        ? auditTurning(
            { code: 'stepCalled', facts: { step: step.name } },
            step.turning,
            `steps[${index}].turning`,
          )
        : [],
    ),
    ...spec.procedures.flatMap(({ name, passes }, index) =>
      passes.flatMap((pass, at) => {
        if (pass.kind !== 'action' || pass.turning === undefined) return []
        const facts = { procedure: name, pass: at + 1 }
        const path = `procedures[${index}].passes[${writtenAt(passes, at)}]`
        return [
          ...auditTurning({ code: 'passOf', facts }, pass.turning, `${path}.turning`),
          ...(pass.reading === undefined ? [] : [fault('two-readings-at-once', facts, `${path}.reading`)]),
        ]
      }),
    ),
  ]
}

function auditTurning(
  place: Phrase,
  { least, most, mostRise, unit }: TurningTorque,
  path: string,
): readonly Finding[] {
  const shown = (torque: Torque) => shortAmount(torqueIn(torque, unit), unit, 3)
  const pair = { least: least ?? undefined, most: most ?? undefined }
  return [
    ...auditPair(place, path, pair, shown),
    ...(mostRise !== null && most !== null && mostRise >= most
      ? [doubt('rise-above-most', { place, rise: shown(mostRise), most: shown(most) }, `${path}.mostRise`)]
      : []),
  ]
}
