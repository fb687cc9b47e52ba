import type { Words } from '../words.ts'
import { auditPhrases } from './audit/audit-phrases.ts'
import { specAdvice } from './audit/spec-advice.ts'
import { hostPhrases } from './host/host-phrases.ts'
import { specProperties } from './library/spec-properties.ts'
import { sheetPhrases } from './sheet/sheet-phrases.ts'

/** What one entry of a list in a spec is called, by the name of the list. */
const entries: Readonly<Record<string, string>> = {
  accepted: 'angenommener Zweifel',
  after: 'Schritt davor, Nr.',
  at: 'Koordinate',
  balanceBearings: 'Ausgleichswellenlager',
  beads: 'Dichtraupe',
  cautions: 'Warnung',
  chart: 'Feld der Auswahltabelle',
  checks: 'Prüfung',
  counterweights: 'Gegengewicht',
  dangers: 'Gefahr',
  dowels: 'Passstift',
  faceParts: 'Teil',
  faces: 'Fläche',
  fastenerGroups: 'Schraubengruppe',
  fasteners: 'Schraube',
  fits: 'Lagerung',
  grades: 'Klasse',
  keepOut: 'Sperrzone',
  layers: 'geklemmtes Teil',
  marks: 'Kennzeichen',
  measures: 'Messung',
  numbers: 'Zahl',
  oilPassages: 'Ölkanal',
  only: 'nachgeprüfte, Nr.',
  orders: 'Reihenfolge',
  others: 'anderer Wert, Nr.',
  outline: 'Ecke',
  pages: 'Seite',
  parts: 'Teil',
  passes: 'Durchgang',
  path: 'Punkt',
  pistons: 'Kolben',
  places: 'Stelle',
  positions: 'Lager',
  procedures: 'Anziehvorgang',
  rings: 'Ring',
  ringSets: 'Ringsatz',
  rods: 'Pleuel',
  saddles: 'Lagersitz',
  sequence: 'Schraube Nr.',
  size: 'Maß',
  steps: 'Schritt',
  throws: 'Kröpfung',
  typedBy: 'eingegebener Wert',
  undersizes: 'Untermaß',
  usedIn: 'Verwendung',
  walls: 'Wand',
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
  nameInSpec: ({ de }) => de,
  angleInAll: ({ angle }) => `${angle} insgesamt`,
}
