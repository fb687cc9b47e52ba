import type { Problem } from '../../core/problem/index.ts'

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

/** What is mended elsewhere than where it is said of: nothing stands yet at the place that would mend it. */
const mendedIn: Readonly<Record<string, Section>> = {
  'bearings-without-fit': 'fits',
  'end-float-missing': 'fits',
  'source-unchecked': 'check',
  'source-checked-by-same': 'check',
  'source-copied-from-demo': 'check',
}

/** Where that of which the audit speaks is mended. */
export function sectionOf({ code, path }: Pick<Problem, 'code' | 'path'>): Section {
  const elsewhere = mendedIn[code]
  if (elsewhere !== undefined) return elsewhere
  if (/^beads\[\d+\]\.path\b/.test(path)) return 'drawing'
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
