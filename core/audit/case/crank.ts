import { showsCrank, type Crank, type EngineCase, type EngineSpec } from '../../engine/index.ts'
import { half } from '../../quantity/index.ts'
import { fault, type Finding } from '../finding.ts'

/** The crank as it is drawn, against the saddles and rods of the case, and the steps that show it. */
export function auditCrank(spec: EngineSpec): readonly Finding[] {
  const { crank, steps } = spec
  return [
    ...(crank === undefined
      ? []
      : [...auditThrows(crank, spec.case), ...auditWeights(crank), ...auditWheels(crank, spec.case)]),
    ...steps.flatMap((step, index) => {
      if (!('shows' in step) || step.shows === undefined) return []
      const path = `steps[${index}].shows`
      if (crank === undefined) return [fault('crank-not-described', { step: step.name }, path)]
      const face = spec.case.faces.find(({ id }) => id === step.face) ?? spec.case.faces[0]!
      return showsCrank(face) ? [] : [fault('crank-not-on-face', { step: step.name, face: face.name }, path)]
    }),
  ]
}

/** Every rod runs on one pin, and no saddle stands between those of one pin. */
function auditThrows({ throws }: Crank, { rods, saddles }: EngineCase): readonly Finding[] {
  const without = rods.flatMap(({ id }) =>
    throws.some((each) => each.rods.includes(id))
      ? []
      : [fault('rod-without-throw', { rod: id }, 'crank.throws')],
  )
  return [
    ...without,
    ...throws.flatMap((one, index) => {
      const path = `crank.throws[${index}].rods`
      const before = throws.slice(0, index)
      const twice = one.rods.flatMap((rod, place) => {
        const first = before.find((each) => each.rods.includes(rod))
        if (first !== undefined)
          return [fault('rod-on-two-throws', { rod, first: first.id, second: one.id }, path)]
        return one.rods.indexOf(rod) < place
          ? [fault('rod-on-two-throws', { rod, first: one.id, second: one.id }, path)]
          : []
      })
      const places = rods.filter(({ id }) => one.rods.includes(id)).map(({ at }) => at)
      const [from, to] = [Math.min(...places), Math.max(...places)]
      const between = saddles.find(({ at }) => at > from && at < to)
      return between === undefined
        ? twice
        : [...twice, fault('saddle-within-throw', { throw: one.id, saddle: between.id }, path)]
    }),
  ]
}

function auditWeights({ counterweights }: Crank): readonly Finding[] {
  return counterweights.flatMap((one, index) =>
    counterweights.slice(0, index).some((each) => each.throw === one.throw && each.side === one.side)
      ? [fault('counterweight-twice', { throw: one.throw, side: one.side }, `crank.counterweights[${index}]`)]
      : [],
  )
}

/** A wheel sits beside the bearings. */
function auditWheels({ wheels }: Crank, { rods, saddles }: EngineCase): readonly Finding[] {
  const bearings = [...saddles, ...rods]
  return wheels.flatMap((wheel, index) => {
    const over = bearings.find(({ at, width }) => Math.abs(at - wheel.at) < half(width) + half(wheel.width))
    return over === undefined
      ? []
      : [fault('wheel-over-bearing', { wheel: wheel.id, bearing: over.id }, `crank.wheels[${index}].at`)]
  })
}
