import { done, refused } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'

interface Expected {
  readonly path: string
  /** What it is called in a sentence. */
  readonly what: string
  readonly most: number
  /** The problem when there is none; without it, none will do. */
  readonly missing?: 'build-name-missing' | 'person-missing'
}

/** A line of text as a person typed it, without the spaces around it. */
export function typedText(typed: string, { path, what, most, missing }: Expected): Outcome<string> {
  const text = typed.trim()
  if (text === '' && missing) return refused(missing, {}, path)
  if (text.length > most) return refused('text-too-long', { what, most }, path)
  return done(text)
}
