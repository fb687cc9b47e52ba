import { inUnitOf, unitOfValue, type BareParameters } from '../../core/drafts/index.ts'

/** The form's own state: as `BareParameters`, to be changed field by field. */
export type BareForm = { -readonly [Key in keyof BareParameters]: BareParameters[Key] }

/** What the form has before anything is typed: kinds and counts that are common, and no measure at all. */
export function usualBare(): BareForm {
  return {
    ...{ family: 'split-horizontal', cylinders: 4, bankAngle: '0 °', bore: '', pitch: '', mains: 5 },
    ...{ mainDiameter: '', mainWidth: '', thrustMain: null, rods: null },
  }
}

/** The parameters with every bare number in the unit of the bore; as they were typed where that has none either. */
export function inUnitOfBore(typed: BareParameters): BareParameters {
  const unit = unitOfValue(typed.bore)
  const length = (each: string) => (unit === '' || each.trim() === '' ? each : inUnitOf(each, `0 ${unit}`))
  const { pitch, mainDiameter, mainWidth, rods, bankAngle } = typed
  return {
    ...typed,
    bankAngle: inUnitOf(bankAngle, '0 °'),
    ...{ pitch: length(pitch), mainDiameter: length(mainDiameter), mainWidth: length(mainWidth) },
    rods: rods && { diameter: length(rods.diameter), width: length(rods.width) },
  }
}
