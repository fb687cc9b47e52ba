/** The parts of the editor beside its drawing. */
export const sections = [
  'drawing',
  'case',
  'faces',
  'groups',
  'passes',
  'fits',
  'steps',
  'parts',
  'rest',
  'check',
  'audit',
] as const
export type Section = (typeof sections)[number]

/** Where a place of the document is edited. */
export function sectionOf(path: string): Section {
  if (/^(fasteners|case\.(dowels|oilPassages|faceParts))\b/.test(path)) return 'drawing'
  if (/^procedures\[\d+\]\.orders\b/.test(path)) return 'drawing'
  if (/^(case\.faces|beads)\b/.test(path)) return 'faces'
  if (/^(case|crank|ringSets)\b/.test(path)) return 'case'
  if (path.startsWith('fastenerGroups')) return 'groups'
  if (path.startsWith('procedures')) return 'passes'
  if (/^(fits|endFloat|rodSideClearance)\b/.test(path)) return 'fits'
  if (path.startsWith('steps')) return 'steps'
  if (/^(parts|cautions)\b/.test(path)) return 'parts'
  return 'rest'
}
