import { formatAngle, formatLength, formatTorque, type Length } from '../quantity/index.ts'
import type { EngineSpec, Fit } from '../engine/index.ts'
import { doubt, fault, type Finding } from './finding.ts'

interface Limits<Value> {
  readonly target?: Value | undefined
  readonly least?: Value | undefined
  readonly most?: Value | undefined
}

/** Limits that contradict themselves or one another: the misprints of manuals. */
export function auditLimits(spec: EngineSpec): readonly Finding[] {
  const { endFloat, rodSideClearance } = spec
  return [
    ...spec.fits.flatMap((fit, index) => auditFit(fit, `fits[${index}].clearance`)),
    ...(endFloat === undefined ? [] : auditEndFloat(endFloat)),
    ...(rodSideClearance === undefined
      ? []
      : auditPair('Rod side clearance', 'rodSideClearance', rodSideClearance, asMillimetres)),
    ...auditReadings(spec),
    ...auditWindows(spec),
  ]
}

function auditPair<Value extends number>(
  place: string,
  path: string,
  { target, least, most }: Limits<Value>,
  format: (value: Value) => string,
): readonly Finding[] {
  if (least !== undefined && most !== undefined && least > most)
    return [fault('least-above-most', { place, least: format(least), most: format(most) }, path)]
  const under = target !== undefined && least !== undefined && target < least
  const over = target !== undefined && most !== undefined && target > most
  if (!under && !over) return []
  const shown = (value: Value | undefined): string => (value === undefined ? '…' : format(value))
  return [
    fault(
      'target-outside-limits',
      { place, target: format(target), least: shown(least), most: shown(most) },
      path,
    ),
  ]
}

function auditFit({ name, clearance }: Fit, path: string): readonly Finding[] {
  const { most, serviceLimit } = clearance
  const findings = auditPair(`${name}, oil clearance`, path, clearance, asMicrometres)
  if (serviceLimit === undefined || serviceLimit >= most) return findings
  const facts = { fit: name, limit: asMicrometres(serviceLimit), most: asMicrometres(most) }
  return [...findings, fault('service-limit-below-most', facts, `${path}.serviceLimit`)]
}

function auditEndFloat(endFloat: NonNullable<EngineSpec['endFloat']>): readonly Finding[] {
  const rows = endFloat.washers
  return [
    ...auditPair('End float', 'endFloat', endFloat, asMillimetres),
    ...rows.flatMap(({ name, floatFrom, floatTo }, index) =>
      auditPair(
        `End float, washer “${name}”`,
        `endFloat.washers[${index}]`,
        { least: floatFrom, most: floatTo },
        asMillimetres,
      ),
    ),
    // Rows may meet at their edges; where they leave a gap the answer is 'not defined', never a guess.
    ...rows.flatMap((first, index) =>
      rows.slice(index + 1).flatMap((second) => {
        const overlap = first.floatFrom < second.floatTo && second.floatFrom < first.floatTo
        const facts = { first: first.name, second: second.name }
        return overlap ? [fault('washers-overlap', facts, `endFloat.washers[${index}]`)] : []
      }),
    ),
  ]
}

function auditReadings({ steps, endFloat }: EngineSpec): readonly Finding[] {
  return steps.flatMap((step, index) => {
    if (step.kind !== 'check' || step.reading === undefined) return []
    const { reading } = step
    const path = `steps[${index}].reading`
    const differs =
      /end (float|play)/i.test(step.name) &&
      endFloat !== undefined &&
      (reading.least !== endFloat.least || reading.most !== endFloat.most)
    return [
      ...auditPair(step.name, path, reading, asMillimetres),
      ...(differs
        ? [
            doubt(
              'end-float-said-twice',
              { step: step.name, here: range(reading), there: range(endFloat) },
              path,
            ),
          ]
        : []),
    ]
  })
}

function auditWindows({ procedures }: EngineSpec): readonly Finding[] {
  return procedures.flatMap(({ name, passes }, i) =>
    passes.flatMap((pass, k) => {
      const place = `${name}, pass ${k + 1}`
      const path = `procedures[${i}].passes[${k}]`
      switch (pass.kind) {
        case 'torque':
        case 'recheck':
          return [
            ...auditPair(place, path, pass, asNewtonMetres),
            ...pass.others.flatMap((other, n) =>
              auditPair(place, `${path}.others[${n}]`, other, asNewtonMetres),
            ),
          ]
        case 'angle':
          return [pass, ...(pass.others ?? [])].flatMap((each, n) =>
            auditPair(place, n === 0 ? path : `${path}.others[${n - 1}]`, each, (angle) =>
              formatAngle(angle),
            ),
          )
        case 'stretch':
          return auditPair(place, path, pass, asMillimetres)
        case 'action':
          return pass.reading === undefined
            ? []
            : auditPair(place, `${path}.reading`, pass.reading, asMillimetres)
        case 'seat':
        case 'loosen':
        case 'length':
          return []
        default:
          return pass satisfies never
      }
    }),
  )
}

function range({ least, most }: { readonly least: Length; readonly most: Length }): string {
  return `${asMillimetres(least)} to ${asMillimetres(most)}`
}

const asMicrometres = (length: Length): string => formatLength(length, 'µm', 1)
const asMillimetres = (length: Length): string => formatLength(length, 'mm')
const asNewtonMetres = (torque: Parameters<typeof formatTorque>[0]): string => formatTorque(torque, 'N·m')
