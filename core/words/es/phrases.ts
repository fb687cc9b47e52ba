import type { Words } from '../words.ts'
import { auditPhrases } from './audit/audit-phrases.ts'
import { specAdvice } from './audit/spec-advice.ts'
import { hostPhrases } from './host/host-phrases.ts'
import { specProperties } from './library/spec-properties.ts'
import { sheetPhrases } from './sheet/sheet-phrases.ts'

/** What one entry of a list in a spec is called, by the name of the list. */
const entries: Readonly<Record<string, string>> = {
  accepted: 'duda aceptada',
  after: 'paso anterior n.º',
  at: 'coordenada',
  balanceBearings: 'cojinete de equilibrado',
  beads: 'cordón',
  cautions: 'advertencia',
  chart: 'casilla de la tabla',
  checks: 'comprobación',
  counterweights: 'contrapeso',
  dangers: 'peligro',
  dowels: 'pasador de centrado',
  faceParts: 'pieza',
  faces: 'cara',
  fastenerGroups: 'grupo de fijaciones',
  fasteners: 'fijación',
  fits: 'cojinetes',
  grades: 'clase',
  keepOut: 'zona prohibida',
  layers: 'pieza apretada',
  marks: 'marca',
  measures: 'medición',
  numbers: 'número',
  oilPassages: 'conducto de aceite',
  only: 'comprobada n.º',
  orders: 'orden',
  others: 'otro valor, n.º',
  outline: 'vértice',
  pages: 'página',
  parts: 'pieza',
  passes: 'pasada',
  path: 'punto',
  pistons: 'pistón',
  places: 'lugar',
  positions: 'cojinete',
  procedures: 'procedimiento',
  rings: 'segmento',
  ringSets: 'juego de segmentos',
  rods: 'biela',
  saddles: 'apoyo',
  sequence: 'fijación n.º',
  size: 'medida',
  steps: 'paso',
  throws: 'codo',
  typedBy: 'valor introducido',
  undersizes: 'submedida',
  usedIn: 'uso',
  walls: 'pared',
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
  nameInSpec: ({ es }) => es,
  angleInAll: ({ angle }) => `${angle} en total`,
}
