import { degrees, type Angle } from '../quantity/index.ts'
import type { FlagAnswer } from './answers.ts'
import type { Pull, Run } from './run.ts'

/** Whether a pull is a turn that came short: it counts, and what is left of it is still to be turned. */
export function isShortTurn(run: Run, { number, reading, verdict }: Pull): boolean {
  if (reading?.unit !== '°' || verdict !== 'under') return false
  const flag = run.flags.find((each) => each.pull === number && each.about === 'under')
  // In older records a person may have answered for it in words; that stands.
  return flag === undefined || flag.answer === null || isTurnedOn(flag.answer)
}

function isTurnedOn(answer: FlagAnswer): boolean {
  return typeof answer === 'object' && answer.deed === 'turned-on'
}

/** All that a turn has come to, with what was turned in its pass before. */
export function turnedIn({ reading, from }: Pull): Angle {
  return degrees(from + (reading?.value ?? 0))
}
