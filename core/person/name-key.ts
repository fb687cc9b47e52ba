import { looksLike } from './confusable-letters.ts'

const likeness = new Map(
  Object.entries(looksLike).flatMap(([latin, others]) => [...others].map((other) => [other, latin] as const)),
)

/** What takes no place on the screen: formats, joiners, variation selectors, fillers. */
const unseen = /[\p{Default_Ignorable_Code_Point}\p{Cf}]/gu

/**
 * By what two names are taken for the same: what looks alike is alike. Compatible forms, case, blanks and invisible
 * signs make no difference, and letters of other scripts count as the Latin ones they are mistaken for (Unicode
 * Technical Standard 39). It is for comparing only; a name is kept and shown as it was typed.
 */
export function nameKey(name: string): string {
  const folded = name
    .normalize('NFKC')
    .toLowerCase()
    .normalize('NFKC')
    .replace(unseen, '')
    .replace(/[\s\p{Z}\p{Cc}\u2800]+/gu, ' ')
    .trim()
  const latin = [...folded].map((sign) => likeness.get(sign) ?? sign).join('')
  return latin.replace(/[l1|]/g, 'i').replaceAll('0', 'o').replaceAll('rn', 'm')
}

/** What no name may hold: signs that steer a terminal or a file, break a line, or turn the text after them around. */
const steering = /[\p{Cc}\u2028\u2029\u202A-\u202E\u2066-\u2069]/u

/** Whether a name can be read by everybody in the same way: something of it is seen, and nothing of it steers. */
export function isReadableName(name: string): boolean {
  return (
    !steering.test(name) && /[\p{L}\p{N}\p{P}\p{S}]/u.test(name.replace(unseen, '').replaceAll('\u2800', ''))
  )
}
