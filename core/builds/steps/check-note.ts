import { lengthAmount, nanometres } from '../../quantity/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import type { Words } from '../../words/index.ts'
import type { CheckAnswer } from '../events/state.ts'

type CheckNote = Pick<
  CheckAnswer,
  'note' | 'fittedWashers' | 'washersByTable' | 'measuredWith' | 'thrustPair'
>

/** The answer to a check with its thrust washers as they are called, where it has them as entries do; so too those that the spec lacks. */
export function washersCalled<Answer extends Omit<CheckNote, 'note'>>(
  { endFloat }: EngineSpec,
  answer: Answer,
): Answer {
  const called = (key: string) => endFloat?.washers.find(({ name }) => name.key === key)?.name.text ?? key
  const named = <Each extends { readonly name: string }>(each: Each) => ({ ...each, name: called(each.name) })
  const { fittedWashers, washersByTable, measuredWith, thrustPair } = answer
  return {
    ...answer,
    ...(fittedWashers !== undefined && { fittedWashers: called(fittedWashers) }),
    ...(washersByTable && { washersByTable: named(washersByTable) }),
    ...(measuredWith !== undefined && { measuredWith: measuredWith.map(called) }),
    ...(thrustPair && {
      thrustPair: { ...thrustPair, first: named(thrustPair.first), second: named(thrustPair.second) },
    }),
  }
}

/** What stands beside the reading of a check: the person's own words, then the thrust washers as they are called. Empty where nothing does. */
export function checkNote(words: Words, noted: CheckNote): string {
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

function pairText(words: Words, { first, second, float_nm }: NonNullable<CheckNote['thrustPair']>): string {
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

function byTable(words: Words, { name, thickness_nm }: NonNullable<CheckNote['washersByTable']>): string {
  const thickness = words.amounts.amount(lengthAmount(nanometres(thickness_nm), 'mm'))
  return words.steps.check.washersByTable({ name, thickness })
}
