import type { Verification } from '../../core/contract/index.ts'
import type { Words } from '../../core/words/index.ts'

/** What a verification found, in one sentence. */
export function verifiedText(words: Words, seen: Extract<Verification, { readonly state: 'done' }>): string {
  const { build, builds, entries, witnesses, breaks } = seen
  if (breaks.length === 0)
    return words.record.verify.isWhole({ builds: build === null ? builds : null, entries, witnesses })
  if (build !== null) return words.record.verify.buildIsBroken
  const broken = new Set(breaks.map(({ build }) => build).filter(Boolean)).size
  if (broken === 0) return words.record.verify.wholeIsBroken
  return words.record.verify.someAreBroken({ broken, builds })
}
