import type { BuildSheet } from '../../../core/builds/index.ts'
import { en } from '../../../core/words/index.ts'
import { entryFields } from './size-rows.ts'

/** The columns of the table of parts. */
export const partFields = [
  'part',
  'place',
  'wanted',
  'when',
  'step',
  'count',
  'condition',
  'in_builds_before',
  'against_the_spec',
  'left_over',
  'supplier_number',
  'entry',
  'time_utc',
  'person',
] as const

/** What became of each part: a line for all that was said of it, and one for what nothing was said of. */
export function partRows({ parts }: BuildSheet) {
  return parts.flatMap(({ name, place, count: wanted, reuse, ticks, leftOver, open }) => {
    const of = { part: name, place, wanted, when: en.partsList.reuse(reuse) }
    const nothing = { condition: null, in_builds_before: null, against_the_spec: null }
    return [
      ...ticks.map(({ step, count, condition, before, reason, number, stamp }) => ({
        ...{ ...of, step, count, condition, in_builds_before: before ?? null, against_the_spec: reason },
        ...{ left_over: null, supplier_number: number, ...entryFields(stamp) },
      })),
      ...leftOver.map(({ step, count, reason, stamp }) => ({
        ...{
          ...of,
          ...nothing,
          step,
          count,
          left_over: reason,
          supplier_number: null,
          ...entryFields(stamp),
        },
      })),
      ...(open === 0
        ? []
        : [
            {
              ...{ ...of, ...nothing, step: null, count: open, condition: 'not-accounted' },
              ...{ left_over: null, supplier_number: null, ...entryFields(null) },
            },
          ]),
    ]
  })
}
