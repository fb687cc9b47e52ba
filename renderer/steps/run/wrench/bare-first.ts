import type { UsableWrench, WrenchChoice } from '../../../../core/tightening/index.ts'

/** The wrenches that can be used, the best first; an adapter is for where the bare wrench does not reach. */
export function bareFirst({ usable }: WrenchChoice): readonly UsableWrench[] {
  return [
    ...usable.filter(({ adapter }) => adapter === null),
    ...usable.filter(({ adapter }) => adapter !== null),
  ]
}
