import type { auditPhrases as pattern } from '../../en/audit/audit-phrases.ts'
import type { Table } from '../../table.ts'

export const auditPhrases: Table<typeof pattern> = {
  partOfFit: ({ fit, part, mark }) => `${fit}, ${part}${mark === null ? '' : `, Kennzeichen ${mark}`}`,
  gradeOfFit: ({ fit, grade }) => `${fit}, Klasse ${grade}`,
  oilClearance: ({ fit }) => `${fit}, Lagerspiel`,
  rodSideClearance: (_) => 'Seitenspiel der Pleuel',
  endFloat: (_) => 'Axialspiel',
  endFloatOfWasher: ({ washer }) => `Axialspiel, Anlaufscheibe „${washer}“`,
  measureCalled: ({ name }) => name,
  passOf: ({ procedure, pass }) => `${procedure}, Durchgang ${pass}`,
  fastenerNumbered: ({ number }) => `Schraube ${number}`,
  dowelCalled: ({ dowel }) => `Passstift ${dowel}`,
  facePartCalled: ({ name }) => `„${name}“`,
  passageCalled: ({ name }) => `„${name}“`,
}
