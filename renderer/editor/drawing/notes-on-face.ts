import type { Finding } from '../../../core/audit/index.ts'
import { aboutOf, thingAt } from '../../../core/drafts/index.ts'
import type { SpecDocument } from '../../../core/engine/index.ts'
import type { NoteFact } from '../../../core/layout/index.ts'
import { sentenceIn } from '../../../core/problem/index.ts'
import type { Words } from '../../../core/words/index.ts'

/** What the audit says of the things of a face, as the drawing notes it. */
export function notesOn(
  words: Words,
  document: SpecDocument,
  face: string,
  findings: readonly Finding[],
): readonly NoteFact[] {
  const texts = new Map<string, string[]>()
  for (const { problem } of findings) {
    const found = thingAt(document, problem.path)
    if (found?.face !== face) continue
    const about = aboutOf(found)
    texts.set(about, [...(texts.get(about) ?? []), sentenceIn(words, problem)])
  }
  return [...texts].map(([about, said]) => ({ about, kind: 'open', texts: said }))
}
