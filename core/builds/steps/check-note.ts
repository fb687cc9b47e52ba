import { lengthAmount, nanometres } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'
import type { CheckAnswer } from '../events/state.ts'

type Noted = Pick<CheckAnswer, 'note' | 'fittedWashers' | 'washersByTable'>

/** What stands beside the reading of a check: the person's own words, then the thrust washers. Empty where nothing does. */
export function checkNote(words: Words, { note, fittedWashers, washersByTable }: Noted): string {
  const { check } = words.steps
  const washers = [
    ...(washersByTable === undefined
      ? []
      : [washersByTable === null ? check.washersNotDefined : byTable(words, washersByTable)]),
    ...(fittedWashers === undefined ? [] : [check.withWashers({ name: fittedWashers })]),
  ].join(', ')
  return [note, washers].filter((text) => text !== '').join(note.endsWith('.') ? ' ' : '. ')
}

function byTable(words: Words, { name, thickness_nm }: NonNullable<Noted['washersByTable']>): string {
  const thickness = words.amounts.amount(lengthAmount(nanometres(thickness_nm), 'mm'))
  return words.steps.check.washersByTable({ name, thickness })
}
