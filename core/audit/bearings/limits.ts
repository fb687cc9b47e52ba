import type { Amount, Span } from '../../words/index.ts'
import type { Facts, Phrase } from '../../problem/index.ts'
import { angleAmount, lengthAmount, torqueAmount, type Length, type Torque } from '../../quantity/index.ts'
import { lengthUnitOf, printedAlike, torqueUnitOf } from '../entered-unit.ts'
import { writtenAt, type EngineSpec, type Fit } from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'

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
      : auditPair(rodSide, 'rodSideClearance', rodSideClearance, lengthsAs(rodSideClearance))),
    ...auditReadings(spec),
    ...auditWindows(spec),
  ]
}

const rodSide: Phrase = { code: 'rodSideClearance', facts: {} }
const ofEndFloat: Phrase = { code: 'endFloat', facts: {} }

export function auditPair<Value extends number>(
  place: Phrase,
  path: string,
  { target, least, most }: Limits<Value>,
  shown: (value: Value) => Amount,
): readonly Finding[] {
  if (least !== undefined && most !== undefined && least > most)
    return [fault('least-above-most', { place, least: shown(least), most: shown(most) }, path)]
  const under = target !== undefined && least !== undefined && target < least
  const over = target !== undefined && most !== undefined && target > most
  if (!under && !over) return []
  const ifAny = (value: Value | undefined) => (value === undefined ? null : shown(value))
  const facts = { place, target: shown(target), least: ifAny(least), most: ifAny(most) }
  return [fault('target-outside-limits', facts, path)]
}

function auditFit({ name, clearance }: Fit, path: string): readonly Finding[] {
  const { most, serviceLimit } = clearance
  const findings = auditPair(
    { code: 'oilClearance', facts: { fit: name } },
    path,
    clearance,
    clearanceAs(clearance),
  )
  if (serviceLimit === undefined || serviceLimit >= most) return findings
  const shown = clearanceAs(clearance)
  const facts = { fit: name, limit: shown(serviceLimit), most: shown(most) }
  return [...findings, fault('service-limit-below-most', facts, `${path}.serviceLimit`)]
}

function auditEndFloat(endFloat: NonNullable<EngineSpec['endFloat']>): readonly Finding[] {
  const rows = endFloat.washers
  return [
    ...auditPair(ofEndFloat, 'endFloat', endFloat, lengthsAs(endFloat)),
    ...rows.flatMap(({ name, floatFrom, floatTo }, index) =>
      auditPair(
        { code: 'endFloatOfWasher', facts: { washer: name.text } },
        `endFloat.washers[${index}]`,
        { least: floatFrom, most: floatTo },
        lengthsAs({ least: floatFrom, most: floatTo }),
      ),
    ),
    // Rows may meet at their edges; where they leave a gap the answer is 'not defined', never a guess.
    ...rows.flatMap((first, index) =>
      rows.slice(index + 1).flatMap((second) => {
        const overlap =
          (first.floatFrom ?? Infinity) < (second.floatTo ?? -Infinity) &&
          (second.floatFrom ?? Infinity) < (first.floatTo ?? -Infinity)
        const facts = { first: first.name.text, second: second.name.text }
        return overlap ? [fault('washers-overlap', facts, `endFloat.washers[${index}]`)] : []
      }),
    ),
  ]
}

function auditReadings({ steps, endFloat, rodSideClearance }: EngineSpec): readonly Finding[] {
  const limitsOf = { 'end-float': endFloat, 'rod-side': rodSideClearance }
  return steps.flatMap((step, index) => {
    if (step.kind !== 'check' || step.reading === undefined) return []
    const { reading, gap } = step
    const path = `steps[${index}].reading`
    const own = auditPair(
      { code: 'stepCalled', facts: { step: step.name } },
      path,
      reading,
      lengthsAs(reading),
    )
    const there = gap && limitsOf[gap]
    if (!gap || !there) return own
    if (printedAlike(reading, there)) return own
    const facts: Facts<'limits-said-twice'> = {
      step: step.name,
      gap,
      here: range(reading),
      there: range(there),
    }
    return [...own, doubt('limits-said-twice', facts, path)]
  })
}

function auditWindows({ procedures }: EngineSpec): readonly Finding[] {
  return procedures.flatMap(({ name, passes }, i) =>
    passes.flatMap((pass, k) => {
      const place: Phrase = { code: 'passOf', facts: { procedure: name, pass: k + 1 } }
      const path = `procedures[${i}].passes[${writtenAt(passes, k)}]`
      switch (pass.kind) {
        case 'torque':
        case 'recheck':
          return [
            ...auditPair(place, path, pass, torquesAs(pass)),
            ...pass.others.flatMap((other, n) =>
              auditPair(place, `${path}.others[${n}]`, other, torquesAs(other)),
            ),
          ]
        case 'angle':
          return [pass, ...(pass.others ?? [])].flatMap((each, n) =>
            auditPair(place, n === 0 ? path : `${path}.others[${n - 1}]`, each, (angle) =>
              angleAmount(angle),
            ),
          )
        case 'stretch':
          return auditPair(place, path, pass, lengthsAs(pass))
        case 'tighten-to-stretch':
          return [
            ...auditPair(place, path, pass, lengthsAs(pass)),
            ...auditPair(place, `${path}.torque`, pass.torque, torquesAs(pass.torque)),
          ]
        case 'action':
          return pass.reading === undefined
            ? []
            : auditPair(place, `${path}.reading`, pass.reading, lengthsAs(pass.reading))
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

function range(limits: { readonly least: Length; readonly most: Length }): Span {
  const shown = lengthsAs(limits)
  return { from: shown(limits.least), upTo: shown(limits.most) }
}

/** Lengths in the unit they were entered in: the finding can then be held against the manual. */
export function lengthsAs({ target, least, most }: Limits<Length>): (length: Length) => Amount {
  const unit = lengthUnitOf(definedValues(target, least, most))
  return (length) => lengthAmount(length, unit)
}

/** As `lengthsAs`, clearances in µm rather than mm. */
function clearanceAs({ target, least, most }: Limits<Length>): (length: Length) => Amount {
  const unit = lengthUnitOf(definedValues(target, least, most))
  return (length) => (unit === 'in' ? lengthAmount(length, 'in') : lengthAmount(length, 'µm', 1))
}

function torquesAs({ target, least, most }: Limits<Torque>): (torque: Torque) => Amount {
  const unit = torqueUnitOf(definedValues(target, least, most))
  return (torque) => torqueAmount(torque, unit)
}

function definedValues<Value>(...values: readonly (Value | undefined)[]): readonly Value[] {
  return values.filter((value) => value !== undefined)
}
