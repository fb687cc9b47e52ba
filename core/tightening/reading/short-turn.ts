import { degrees, type Angle } from '../../quantity/index.ts'
import type { FlagAnswer } from '../run/answers.ts'
import type { Pull, Run } from '../run/run.ts'

/**
 * Whether a pull came short and is continued from where it stands: a turn, or one that is tightened until it is so much
 * longer. It counts, and what is left of it is still to be done.
 */
export function isShort(run: Run, { number, reading, torque, verdict }: Pull): boolean {
  if ((reading?.unit !== '°' && torque === null) || verdict !== 'under') return false
  const flag = run.flags.find((each) => each.pull === number && each.about === 'under')
  // In older records a person may have answered for it in words; that stands.
  return flag === undefined || flag.answer === null || isContinued(flag.answer)
}

function isContinued(answer: FlagAnswer): boolean {
  if (typeof answer === 'string' || !('deed' in answer)) return false
  return answer.deed === 'turned-on' || answer.deed === 'tightened-on'
}

/** All that a turn has come to, with what was turned in its pass before. */
export function turnedIn({ reading, from }: Pull): Angle {
  return degrees(from + (reading?.value ?? 0))
}
