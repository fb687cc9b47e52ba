import { getContext, setContext } from 'svelte'
import { ReadingField } from './reading-field.svelte.ts'

const key = Symbol('readingField')

/** `begun` is called whenever something is typed or sent into the field. */
export function provideReadingField(begun: () => void): ReadingField {
  return setContext(key, new ReadingField(begun))
}

/** Null for a part that stands outside a build's window. */
export function useReadingField(): ReadingField | null {
  return getContext<ReadingField | undefined>(key) ?? null
}
