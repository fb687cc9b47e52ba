import { missingPractice, type DrillOf } from './daily-set.ts'
import type { DrillProgress } from './progress.ts'

/** How one person stands with the drills of an engine, for the leader of the shop. */
export interface ReadyPerson {
  readonly name: string
  readonly done: readonly Pick<DrillProgress, 'drill' | 'faultless' | 'faultlessAt'>[]
  /** Whether each drill has as many rounds without an error as the shop wants. */
  readonly isReady: boolean
}

/** Everybody of a list, in its order, with the drills `offered` of one engine; what they did on other engines says nothing here. */
export function readyPeople(
  offered: readonly DrillOf[],
  people: readonly { readonly name: string; readonly progress: readonly DrillProgress[] }[],
  least: number,
): readonly ReadyPerson[] {
  const isOffered = ({ engine, drill }: DrillProgress) =>
    offered.some((each) => each.engine === engine && each.drill === drill)
  return people.map(({ name, progress }) => ({
    name,
    done: progress
      .filter(isOffered)
      .map(({ drill, faultless, faultlessAt }) => ({ drill, faultless, faultlessAt })),
    isReady: missingPractice(offered, progress, least).length === 0,
  }))
}
