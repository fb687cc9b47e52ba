import { problem, type Problem } from '../../problem/index.ts'
import { lengthAmount, type Length } from '../../quantity/index.ts'
import type { EngineSpec, Procedure } from '../../engine/index.ts'
import { groupOf } from '../order/fastener-group.ts'
import { numberOf } from '../order/fastener-number.ts'
import { lengthOfPull } from './measured-length.ts'
import { counts, type PlannedPull } from '../run/plan.ts'
import type { Run } from '../run/run.ts'

/** Fasteners of one group are the same part: by this share of their length one may differ. Common practice, no source. */
const shareAmongOthers = 0.05
/**
 * By this share of its length a fastener may differ from what it measured before it was pulled: a steel bolt yields below
 * 1 %, and is torn at some 10 %. Common practice, no source.
 */
const shareOfItself = 0.02

/**
 * Whether the length of a fastener is one to ask about before it is recorded, a slip of the decimal point or of the unit most
 * likely: null where it goes with its own length before, else with the middle one of the others of its group, else with its
 * grip, than which no fastener is shorter.
 */
export function lengthDoubt(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  { pass, fastener }: PlannedPull,
  length: Length,
): Problem | null {
  const group = groupOf(spec, fastener)
  if (group === undefined) return null
  const doubtOf = (beside: Length, of: 'itself' | 'others' | 'grip') =>
    problem('length-far-off', {
      fastener: numberOf(spec, fastener),
      read: lengthAmount(length, 'mm'),
      beside: lengthAmount(beside, 'mm'),
      of,
    })
  const isFar = (beside: Length, share: number) => Math.abs(length - beside) > share * beside
  const made = run.pulls.filter((pull) => counts(pull) && pull.fastener !== null)
  const before = made.findLast(
    (pull) => pull.fastener === fastener && procedure.passes[pull.pass]?.kind === 'length',
  )
  const own = before && before.pass < pass ? lengthOfPull(before) : null
  if (own !== null) return isFar(own, shareOfItself) ? doubtOf(own, 'itself') : null
  const others = made.flatMap((pull) => {
    const isOther = pull.pass === pass && pull.fastener !== fastener && groupOf(spec, pull.fastener) === group
    return (isOther ? lengthOfPull(pull) : null) ?? []
  })
  const beside = middle(others)
  if (beside !== null) return isFar(beside, shareAmongOthers) ? doubtOf(beside, 'others') : null
  return length < group.grip ? doubtOf(group.grip, 'grip') : null
}

/** The lower one of two in the middle; null of none. */
function middle(lengths: readonly Length[]): Length | null {
  return [...lengths].sort((a, b) => a - b)[Math.floor((lengths.length - 1) / 2)] ?? null
}
