import { signalOf, signals, type Danger } from './danger.ts'
import type { Caution } from './schema.ts'
import type { Step } from './step.ts'

/** The sentences of one language, by kind. */
export type DangerTexts = Readonly<Record<Danger, string>>

/** What a step's kinds of danger say, the most serious first and each once. */
export function cautionsOfKinds(
  texts: DangerTexts,
  { dangers = [] }: { readonly dangers?: readonly Danger[] | undefined },
): readonly Caution[] {
  return [...new Set(dangers)]
    .map((kind) => ({ signal: signalOf[kind], text: texts[kind] }))
    .toSorted((one, other) => signals.indexOf(one.signal) - signals.indexOf(other.signal))
}

/** What is said beside one step: what its spec says of it, as the maker does, before what is said of every step of its kind. */
export function cautionsAt(
  texts: DangerTexts,
  cautions: readonly Caution[],
  step: Step | null | undefined,
): readonly Caution[] {
  if (!step) return []
  return [...cautions.filter(({ steps }) => steps?.includes(step.id)), ...cautionsOfKinds(texts, step)]
}

/** Whether it is people who are hurt, and not the engine alone. */
export function hurtsPeople({ signal }: Caution): boolean {
  return signal !== 'NOTICE'
}
