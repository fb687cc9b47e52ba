import type { Preferences } from '../../core/contract/index.ts'
import { mostKeptBuilds } from '../../core/contract/index.ts'
import type { View } from '../../core/layout/index.ts'

/** How each face of a build is looked at, by the face's id. A face that was never turned is not named. */
export type FaceViews = Readonly<Record<string, View>>

/** What is begun in a build and not confirmed yet. */
export type UnfinishedEntry = Preferences['unfinished'][number]

interface OfBuild {
  readonly build: string
}

/** What the bench keeps for a build. */
export function keptFor<Kept extends OfBuild>(kept: readonly Kept[], build: string): Kept | undefined {
  return kept.find((each) => each.build === build)
}

/** With what is kept for one build now; it comes first, and the one that was not worked on for longest gives way. */
export function withKept<Kept extends OfBuild>(kept: readonly Kept[], now: Kept): Kept[] {
  return [now, ...kept.filter(({ build }) => build !== now.build)].slice(0, mostKeptBuilds)
}
