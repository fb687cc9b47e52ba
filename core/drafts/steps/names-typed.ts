import type { RecordedName, SpecDocument } from '../../engine/index.ts'

type MeasuringStep = Extract<NonNullable<SpecDocument['steps']>[number], { measures: unknown }>
type TypedPlace = MeasuringStep['measures'][number]['at'][number]

/** The names in a line that has commas or semicolons between them. */
export function namesIn(typed: string): readonly string[] {
  return typed
    .split(/[,;]/)
    .map((each) => each.trim())
    .filter((each) => each !== '')
}

/**
 * The names of such a line as they are written into a document. One that is `shown` by now, in the language of the window, keeps what is
 * `written` of it, with its other languages and what entries refer to.
 */
export function namesTyped(
  typed: string,
  written: readonly TypedPlace[],
  shown: readonly RecordedName[],
): readonly TypedPlace[] {
  return namesIn(typed).map((name) => written[shown.findIndex(({ text }) => text === name)] ?? name)
}
