import { decide, type BuildCommand, type RecordedEvent } from '../../core/builds/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'
import type { Store } from '../store/index.ts'
import type { CachedBuild } from './open-build-cache.ts'

/**
 * What follows from a command to a build. A refusal names steps and parts as the spec does in the language of the window that asks;
 * whether it is one, and what is recorded, hangs on no language.
 */
export function decideInLanguage(
  store: Store,
  { spec, specSha256, state }: CachedBuild,
  asked: { readonly command: BuildCommand; readonly language: Language },
  ...at: [now: string, here: Parameters<typeof decide>[4]]
): Outcome<readonly RecordedEvent['event'][]> {
  const { command, language } = asked
  const decided = decide(spec, state, command, ...at)
  const text = decided.ok || language === 'en' ? null : store.specText(specSha256)
  const read = text === null ? null : readSpec(text, language)
  if (!read?.ok) return decided
  const said = decide(read.spec, state, command, ...at)
  return said.ok ? decided : said
}
