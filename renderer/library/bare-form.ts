import type { BareParameters } from '../../core/drafts/index.ts'

/** The form's own state: as `BareParameters`, to be changed field by field. */
export type BareForm = { -readonly [Key in keyof BareParameters]: BareParameters[Key] }

/** What the form has before anything is typed: kinds and counts that are common, and no measure at all. */
export function usualBare(): BareForm {
  return {
    ...{ family: 'split-horizontal', cylinders: 4, bankAngle: '0 °', bore: '', pitch: '', mains: 5 },
    ...{ mainDiameter: '', mainWidth: '', thrustMain: null, rods: null },
  }
}
