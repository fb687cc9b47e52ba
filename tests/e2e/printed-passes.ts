import { expect, type Page } from '@playwright/test'
import { currentStep } from '../../core/builds/index.ts'
import { en } from '../../core/words/index.ts'
import { isLong } from '../runs.ts'
import { Mechanic } from './mechanic.ts'
import { shown } from './named.ts'
import { workOn } from './seed.ts'

const { run } = en

/** One pass as the manual has it: what the main button says of each fastener, and what stands beside it. */
export interface PrintedPass {
  readonly numbers: readonly string[]
  readonly says: (number: string) => string
  readonly beside?: string | RegExp
}
export const torque = (numbers: readonly string[], target: string, beside?: string): PrintedPass => ({
  numbers,
  says: (number) => run.confirm.at({ number, target: shown(target) }),
  ...(beside !== undefined && { beside }),
})
/** A range without a value of its own: what is aimed at within it is ours. */
export const torqueWithin = (numbers: readonly string[], least: number, most: number): PrintedPass => ({
  numbers,
  says: (number) => run.confirm.at({ number, target: shown('') }),
  beside: new RegExp(`\\b${least}(\\.0)? to ${most}(\\.0)?\\b`),
})
export const angle = (numbers: readonly string[], target: string): PrintedPass => ({
  numbers,
  says: (number) => run.confirm.turned({ number, target: shown(target) }),
})
export const action = (instruction: string): PrintedPass => ({
  numbers: [''],
  says: () => run.confirm.done,
  beside: instruction,
})
/** The numbers of so many fasteners. */
export const upTo = (count: number) => Array.from({ length: count }, (_, index) => String(index + 1))

/**
 * The passes of the procedure that is next, each as it is printed. Of each pass the first and the last pull are confirmed on the page, all
 * of them in the long run; the others come from elsewhere.
 */
export async function carriedOut(
  page: Page,
  person: string,
  procedure: string,
  passes: readonly PrintedPass[],
) {
  const mechanic = new Mechanic(page, 'pointer')
  await workOn(page, person, (spec, state) => {
    const step = currentStep(spec, state)
    return step?.kind === 'run-procedure' && step.name === procedure
  })
  await mechanic.letBounceTimePass()
  await expect(mechanic.main).toContainText(run.confirm.start({ procedure }))
  await mechanic.confirm()
  for (const { numbers, says, beside } of passes)
    for (const [at, number] of numbers.entries()) {
      const isSeam = at === 0 || at === numbers.length - 1
      if (!isLong && at === 1 && !isSeam) {
        const before = await mechanic.entries()
        await workOn(page, person, (_, { seq }) => seq === before + numbers.length - 2)
        await mechanic.letBounceTimePass()
      }
      if (!isLong && !isSeam) continue
      await expect(mechanic.main).toContainText(says(number))
      if (beside !== undefined) await expect(mechanic.panel).toContainText(beside)
      await mechanic.confirm()
    }
}
