import type { Words } from '../words.ts'
import { auditPhrases } from './audit/audit-phrases.ts'
import { specAdvice } from './audit/spec-advice.ts'
import { hostPhrases } from './host/host-phrases.ts'
import { specProperties } from './library/spec-properties.ts'
import { sheetPhrases } from './sheet/sheet-phrases.ts'

/** What one entry of a list in a spec is called, by the name of the list. */
const entries: Readonly<Record<string, string>> = {
  balanceBearings: 'cojinete de equilibrado',
  beads: 'cordón',
  cautions: 'advertencia',
  chart: 'casilla de la tabla',
  counterweights: 'contrapeso',
  dowels: 'pasador de centrado',
  faceParts: 'pieza',
  faces: 'cara',
  fastenerGroups: 'grupo de fijaciones',
  fasteners: 'fijación',
  fits: 'cojinetes',
  grades: 'clase',
  keepOut: 'zona prohibida',
  marks: 'marca',
  oilPassages: 'conducto de aceite',
  measures: 'medición',
  orders: 'orden',
  outline: 'vértice',
  passes: 'pasada',
  parts: 'pieza',
  path: 'punto',
  procedures: 'procedimiento',
  rods: 'biela',
  saddles: 'apoyo',
  steps: 'paso',
  throws: 'codo',
  undersizes: 'submedida',
  usedIn: 'uso',
  washers: 'arandela',
  wheels: 'rueda',
}

export const phrases: Words['phrases'] = {
  ...specAdvice,
  ...auditPhrases,
  ...hostPhrases,
  ...sheetPhrases,
  placeInFile: ({ parts }) =>
    parts
      .map(({ list, name, number }) => {
        const quoted = name === null ? number : `«${name}»`
        return list === null ? quoted : `${entries[list] ?? `elemento de ${list}`} ${quoted}`
      })
      .join(', '),
  placeInSpec: ({ parts }) =>
    parts
      .map(({ list, name, number }) => {
        if (list === null) return specProperties[name ?? ''] ?? `«${name}»`
        return `${entries[list] ?? `elemento de ${list}`} ${name === null ? number : `«${name}»`}`
      })
      .join(', '),
  reading: ({ onScale, atFastener, clamping }) =>
    onScale +
    (atFastener === null && clamping === null ? '' : ' en la escala') +
    (atFastener === null ? '' : `, ${atFastener} en la fijación`) +
    (clamping === null ? '' : `, ${clamping} sin el par de autofrenado`),
  angleInAll: ({ angle }) => `${angle} en total`,
}
