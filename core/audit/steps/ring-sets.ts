import { angleAmount, temperatureAmount } from '../../quantity/index.ts'
import {
  clockFaults,
  gapsBySpec,
  isPlacedStep,
  ringMeasures,
  type ClockFault,
  type EngineSpec,
  type RingSet,
} from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'
import { auditLimitsOf, auditRingGap } from './measures.ts'
import { mustWait } from './steps.ts'

/** Rings: a set for each cylinder, whole oil rings, gaps that stay open and stand apart; measured before they go on. */
export function auditRings(spec: EngineSpec): readonly Finding[] {
  return [
    ...auditCylinders(spec),
    ...spec.ringSets.flatMap((set, index) => [
      ...auditGrooves(set, `ringSets[${index}].rings`),
      ...auditGaps(spec, set, `ringSets[${index}]`),
      ...clockFaults(set, gapsBySpec(set)).map((each) => findingOf(each, `ringSets[${index}].clock`)),
      ...auditSteps(spec, set, `ringSets[${index}]`),
    ]),
    ...auditHotParts(spec),
  ]
}

/** Where one cylinder has rings, each has, and once. */
function auditCylinders({ ringSets, case: { cylinders } }: EngineSpec): readonly Finding[] {
  const pistons = ringSets.flatMap((set, at) =>
    set.pistons.map((piston, index) => ({ ...piston, set, path: `ringSets[${at}].pistons[${index}]` })),
  )
  const has = new Set(pistons.map(({ cylinder }) => cylinder))
  const missing = Array.from({ length: cylinders }, (_, index) => index + 1).find((each) => !has.has(each))
  return [
    ...pistons.flatMap(({ name, bore, cylinder, set, path }, index) => {
      if (cylinder > cylinders)
        return [fault('piston-without-cylinder', { piston: name.text, cylinder, cylinders }, path)]
      const before = pistons.slice(0, index)
      if (before.some((each) => each.cylinder === cylinder))
        return [fault('cylinder-with-two-ring-sets', { cylinder }, path)]
      const twin = before.find(
        (each) => each.set === set && (each.name.key === name.key || each.bore.key === bore.key),
      )
      if (twin === undefined) return []
      const place = (twin.name.key === name.key ? name : bore).text
      return [fault('measured-place-twice', { name: set.name, place }, path)]
    }),
    ...(pistons.length > 0 && missing !== undefined
      ? [fault('cylinder-without-rings', { cylinder: missing }, 'ringSets')]
      : []),
  ]
}

function auditGrooves({ rings }: RingSet, path: string): readonly Finding[] {
  const backwards = rings.findIndex((ring, index) => ring.groove < (rings[index - 1]?.groove ?? 1))
  const byGroove = Map.groupBy(rings, ({ groove }) => groove)
  return [
    ...(backwards < 0
      ? []
      : [
          fault(
            'rings-out-of-order',
            { first: rings[backwards - 1]!.name, second: rings[backwards]!.name },
            `${path}[${backwards}]`,
          ),
        ]),
    ...[...byGroove].flatMap(([groove, inGroove]) => {
      const kinds = inGroove.map(({ kind }) => kind).join('/')
      const isWhole = inGroove.length === 1 && kinds !== 'rail' && kinds !== 'expander'
      // A one-piece oil ring may have a spring behind it.
      const isOil = ['rail/expander/rail', 'oil/expander', 'expander/oil'].includes(kinds)
      return isWhole || isOil ? [] : [fault('groove-not-whole', { groove }, path)]
    }),
  ]
}

function auditGaps(spec: EngineSpec, set: RingSet, path: string): readonly Finding[] {
  return [
    ...set.rings.flatMap(({ name, kind, endGap }, index) =>
      endGap === undefined && kind !== 'expander'
        ? [fault('ring-without-gap', { ring: name }, `${path}.rings[${index}]`)]
        : [],
    ),
    ...ringMeasures(set, spec.case.bore).flatMap((measure) => {
      const at = `${path}.rings[${set.rings.indexOf(measure.ring)}]`
      if (measure.what === 'groove-clearance') return auditLimitsOf(measure, `${at}.grooveClearance`)
      return [
        ...auditLimitsOf(measure, `${at}.endGap`),
        ...auditRingGap(measure.bore, measure, `${at}.endGap`),
      ]
    }),
  ]
}

function findingOf(found: ClockFault, path: string): Finding {
  const angles = { apart: angleAmount(found.apart), least: angleAmount(found.least) }
  switch (found.kind) {
    case 'in-line': {
      const [first, second] = found.rings
      return fault('ring-gaps-in-line', { first: first.name, second: second.name, ...angles }, path)
    }
    case 'over-pin':
      return fault('ring-gap-over-pin', { ring: found.ring.name, ...angles }, path)
    case 'on-thrust':
      return fault('ring-gap-on-thrust', { ring: found.ring.name, ...angles }, path)
    default:
      return found satisfies never
  }
}

function auditSteps({ steps }: EngineSpec, set: RingSet, path: string): readonly Finding[] {
  const measuring = steps.find((step) => step.kind === 'measure-rings' && step.rings === set.id)
  const fitting = steps.find((step) => step.kind === 'fit-rings' && step.rings === set.id)
  if (measuring === undefined) return [doubt('rings-never-measured', { rings: set.name }, path)]
  return mustWait(steps, fitting, measuring)
}

/** Metal that is touched burns from here on, when it is touched for long (ISO 13732-1: 43 °C for 8 hours, 48 °C for 10 minutes). */
const burns = 43

function auditHotParts({ steps }: EngineSpec): readonly Finding[] {
  return steps.flatMap((step, at) => {
    if (!isPlacedStep(step)) return []
    const index = step.places.findIndex(({ heatTo }) => heatTo !== undefined && heatTo > burns)
    const isSaid = step.dangers?.includes('hot-part') === true
    const hot = step.places[index]
    if (hot?.heatTo === undefined || isSaid) return []
    const facts = { step: step.name, place: hot.at, temperature: temperatureAmount(hot.heatTo) }
    return [fault('hot-part-without-caution', facts, `steps[${at}].places[${index}]`)]
  })
}
