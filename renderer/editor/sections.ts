/** The parts of the editor beside its drawing. */
export const sections = ['drawing', 'groups', 'passes', 'audit'] as const
export type Section = (typeof sections)[number]

/** Where a place of the document is edited; the audit itself where it has no form. */
export function sectionOf(path: string): Section {
  if (/^(fasteners|case\.(dowels|oilPassages|faceParts))\b/.test(path)) return 'drawing'
  if (/^procedures\[\d+\]\.orders\b/.test(path)) return 'drawing'
  if (path.startsWith('fastenerGroups')) return 'groups'
  return path.startsWith('procedures') ? 'passes' : 'audit'
}
