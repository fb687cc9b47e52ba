import { getContext, setContext } from 'svelte'
import { ReadingField } from './reading-field.svelte.ts'

const key = Symbol('readingField')

export function provideReadingField(): ReadingField {
  return setContext(key, new ReadingField())
}

/** Null for a part that stands outside a build's window. */
export function useReadingField(): ReadingField | null {
  return getContext<ReadingField | undefined>(key) ?? null
}
