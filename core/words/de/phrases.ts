import type { Words } from '../words.ts'
import { auditPhrases } from './audit/audit-phrases.ts'
import { specAdvice } from './audit/spec-advice.ts'
import { hostPhrases } from './host/host-phrases.ts'
import { specProperties } from './library/spec-properties.ts'
import { sheetPhrases } from './sheet/sheet-phrases.ts'

/** What one entry of a list in a spec is called, by the name of the list. */
const entries: Readonly<Record<string, string>> = {
  balanceBearings: 'Ausgleichswellenlager',
  beads: 'Dichtraupe',
  cautions: 'Warnung',
  chart: 'Feld der Auswahltabelle',
  counterweights: 'Gegengewicht',
  dowels: 'Passstift',
  faceParts: 'Teil',
  faces: 'Fläche',
  fastenerGroups: 'Schraubengruppe',
  fasteners: 'Schraube',
  fits: 'Lagerung',
  grades: 'Klasse',
  keepOut: 'Sperrzone',
  marks: 'Kennzeichen',
  oilPassages: 'Ölkanal',
  measures: 'Messung',
  orders: 'Reihenfolge',
  outline: 'Ecke',
  passes: 'Durchgang',
  parts: 'Teil',
  path: 'Punkt',
  procedures: 'Anziehvorgang',
  rods: 'Pleuel',
  saddles: 'Lagersitz',
  steps: 'Schritt',
  throws: 'Kröpfung',
  undersizes: 'Untermaß',
  usedIn: 'Verwendung',
  washers: 'Anlaufscheibe',
  wheels: 'Rad',
}

export const phrases: Words['phrases'] = {
  ...specAdvice,
  ...auditPhrases,
  ...hostPhrases,
  ...sheetPhrases,
  placeInFile: ({ parts }) =>
    parts
      .map(({ list, name, number }) => {
        const quoted = name === null ? number : `„${name}“`
        return list === null ? quoted : `${entries[list] ?? `${list}, Eintrag`} ${quoted}`
      })
      .join(', '),
  placeInSpec: ({ parts }) =>
    parts
      .map(({ list, name, number }) => {
        if (list === null) return specProperties[name ?? ''] ?? `„${name}“`
        return `${entries[list] ?? `${list}, Eintrag`} ${name === null ? number : `„${name}“`}`
      })
      .join(', '),
  reading: (facts) =>
    facts.onScale +
    (facts.atFastener === null && facts.clamping === null ? '' : ' an der Skala') +
    (facts.atFastener === null ? '' : `, ${facts.atFastener} an der Schraube`) +
    (facts.clamping === null ? '' : `, ${facts.clamping} ohne Klemmdrehmoment`),
  angleInAll: ({ angle }) => `${angle} insgesamt`,
}
