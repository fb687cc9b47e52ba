import type { FoundLine } from '../../core/contract/index.ts'

/** Whether work on an open build stands until somebody comes to it. */
export function needsSomebody({ at, standing }: FoundLine): boolean {
  return at?.isForked === true || (standing !== null && (standing.openProblems > 0 || standing.awaitsSecond))
}
