import { sentenceIn, type Problem } from '../../core/problem/index.ts'
import type { Words } from '../../core/words/index.ts'

/** What stands on every printed page of a build that can only be read. */
export interface NotSound {
  /** Across the page, and at its foot. */
  readonly mark: string
  /** At the head of each page. */
  readonly reason: string
}

/**
 * Why a page of a build must not pass for a sound sheet; null for one that is sound. A build that goes on with entries of a
 * newer program is as confirmed, but the sheet is not the whole of it.
 */
export function notSound(words: Words, readOnly: Problem | null): NotSound | null {
  if (readOnly === null || readOnly.code === 'build-elsewhere') return null
  const marks = {
    'build-newer': 'newer',
    'build-of-earlier-rules': 'rules',
    'build-apart': 'apart',
    'build-line-left': 'apart',
  } as const
  const mark =
    words.sheet.flaw[readOnly.code in marks ? marks[readOnly.code as keyof typeof marks] : 'altered']
  return { mark, reason: words.sheet.flawed({ mark, reason: sentenceIn(words, readOnly) }) }
}
