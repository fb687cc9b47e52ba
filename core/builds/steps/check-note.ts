import { lengthAmount, nanometres } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'
import type { CheckAnswer } from '../events/state.ts'

type Noted = Pick<CheckAnswer, 'note' | 'fittedWashers' | 'washersByTable' | 'measuredWith' | 'thrustPair'>

/** What stands beside the reading of a check: the person's own words, then the thrust washers. Empty where nothing does. */
export function checkNote(words: Words, noted: Noted): string {
  const { note, fittedWashers, washersByTable, measuredWith, thrustPair } = noted
  const { check } = words.steps
  const washers = [
    ...(washersByTable === undefined
      ? []
      : [washersByTable === null ? check.washersNotDefined : byTable(words, washersByTable)]),
    ...(thrustPair === undefined
      ? []
      : [thrustPair === null ? check.noPairFits : pairText(words, thrustPair)]),
    ...(measuredWith === undefined ? [] : [measuredText(words, measuredWith)]),
    ...(fittedWashers === undefined ? [] : [check.withWashers({ name: fittedWashers })]),
  ].join(', ')
  return [note, washers].filter((text) => text !== '').join(note.endsWith('.') ? ' ' : '. ')
}

function pairText(words: Words, { first, second, float_nm }: NonNullable<Noted['thrustPair']>): string {
  const mm = (length: number) => words.amounts.amount(lengthAmount(nanometres(length), 'mm'))
  const shown = ({ name, thickness_nm }: typeof first) => ({ name, thickness: mm(thickness_nm) })
  return words.steps.check.fitPair({ first: shown(first), second: shown(second), float: mm(float_nm) })
}

function measuredText(words: Words, [first, second]: readonly string[]): string {
  const { check } = words.steps
  return first === undefined || second === undefined
    ? check.measuredWithout
    : check.measuredWithPair({ first, second })
}

function byTable(words: Words, { name, thickness_nm }: NonNullable<Noted['washersByTable']>): string {
  const thickness = words.amounts.amount(lengthAmount(nanometres(thickness_nm), 'mm'))
  return words.steps.check.washersByTable({ name, thickness })
}
