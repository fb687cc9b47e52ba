import { withUnit } from '../../../core/quantity/index.ts'
import { targetText, unitOf, type Units } from '../../../core/tightening/index.ts'
import type { Words } from '../../../core/words/index.ts'
import type { PullTask } from './run-task.ts'

/** What the main button says of a pull: what is true once it is pressed. */
export function confirmText(
  { pass, fastener, window }: PullTask,
  units: Units,
  typed: string,
  words: Words,
): string {
  const number = fastener?.number ?? null
  const reading = typed.trim()
  if (window !== null && reading !== '')
    return words.run.confirm.reads({ number, reading: withUnit(reading, unitOf(window, units)) })
  if (window?.kind === 'turning') return words.turning.note
  if (window?.kind === 'length' || window?.kind === 'free-length')
    return words.run.confirm.writeDown({ number })
  switch (pass.kind) {
    case 'seat':
      return words.run.confirm.seated({ number })
    case 'loosen':
      return words.run.confirm.loose({ number })
    case 'action':
    case 'length':
    case 'stretch':
    case 'tighten-to-stretch':
      return words.run.confirm.done
    case 'torque':
    case 'angle':
    case 'recheck': {
      if (!window) throw new Error(`a ${pass.kind} pass has no window`)
      const target = targetText(words, window, units)
      if (pass.kind === 'recheck') return words.run.confirm.holds({ number, target })
      return pass.kind === 'angle'
        ? words.run.confirm.turned({ number, target })
        : words.run.confirm.at({ number, target })
    }
    default:
      return pass satisfies never
  }
}
