/** The parts of the editor beside its drawing. */
export const sections = ['drawing', 'groups', 'passes', 'fits', 'rest', 'audit'] as const
export type Section = (typeof sections)[number]

/** Where a place of the document is edited. */
export function sectionOf(path: string): Section {
  if (/^(fasteners|case\.(dowels|oilPassages|faceParts))\b/.test(path)) return 'drawing'
  if (/^procedures\[\d+\]\.orders\b/.test(path)) return 'drawing'
  if (path.startsWith('fastenerGroups')) return 'groups'
  if (path.startsWith('procedures')) return 'passes'
  if (path.startsWith('fits')) return 'fits'
  return 'rest'
}
