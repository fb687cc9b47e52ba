import type { LibraryLine } from '../../core/contract/index.ts'

/** As it is compared: without accents and capitals. */
function plain(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()
}

/** The engines that each word is found in: name in any language, id, family in words, who entered and checked it. */
export function foundIn(
  lines: readonly LibraryLine[],
  typed: string,
  family: LibraryLine['family'] | null,
  familyWord: (family: LibraryLine['family']) => string,
): readonly LibraryLine[] {
  const wanted = plain(typed).split(/\s+/).filter(Boolean)
  return lines.filter((line) => {
    if (family !== null && line.family !== family) return false
    const { name, alsoCalled = [], engine, enteredBy, checkedBy } = line
    const text = plain([name, ...alsoCalled, engine, familyWord(line.family), enteredBy, checkedBy].join(' '))
    return wanted.every((word) => text.includes(word))
  })
}
