import { mostKeptViews, type Preferences } from '../../core/contract/index.ts'
import type { View } from '../../core/layout/index.ts'

/** How each face of a build is looked at, by the face's id. A face that was never turned is not named. */
export type FaceViews = Readonly<Record<string, View>>

type KeptViews = Preferences['views']

export function viewsOf(kept: KeptViews, build: string): FaceViews {
  return kept.find((each) => each.build === build)?.faces ?? {}
}

/** The build comes first, and the one that was not looked at for longest gives way. */
export function withViews(kept: KeptViews, build: string, faces: FaceViews): KeptViews {
  const others = kept.filter((each) => each.build !== build)
  return [{ build, faces }, ...others].slice(0, mostKeptViews)
}
