import { buildSheet, openedAgain } from '../../core/builds/index.ts'
import SheetPlan from '../sheet/SheetPlan.svelte'
import OpensAgain from '../steps/plan/OpensAgain.svelte'
import StepPlan from '../steps/plan/StepPlan.svelte'
import { benchAt, momentOf } from './at-bench.ts'
import { entriesOf, type Entry } from './entry.ts'
import type { OnStage } from './shown.ts'

const part = entriesOf('Parts of a plan', 'panel')
const paper = entriesOf('Parts of a plan', 'paper')

const engine = 'strath-6'

async function planned(shown: OnStage, name: string, step: string) {
  const moment = momentOf(engine, name, step)
  return { ...(await benchAt(shown, moment.build)), step: moment.step }
}

export const planEntries: readonly Entry[] = [
  part(
    'Step in its plan',
    'How a step stands, and the ways to skip it or do it again',
    StepPlan,
    async (shown) => ({
      'may be skipped': await planned(shown, 'check to answer', 'flange-true'),
      skipped: await planned(shown, 'step skipped', 'flange-true'),
      'to be done again': await planned(shown, 'step to be done again', 'turn-crank'),
    }),
  ),
  part(
    'Skipping a step',
    'Why it is skipped',
    StepPlan,
    async (shown) => ({ all: await planned(shown, 'check to answer', 'flange-true') }),
    ['Skip this step'],
  ),
  part(
    'Doing a step again',
    'Why, with what is open again and what is undone first',
    StepPlan,
    async (shown) => {
      const { build } = momentOf(engine, 'check to answer', 'last-look')
      const at = await benchAt(shown, build)
      return { all: { ...at, step: at.openBuild.spec.steps.find(({ id }) => id === 'fit-mains')! } }
    },
    ['Do this step again'],
  ),
  part('What opens again', 'With a step that is done again', OpensAgain, async (shown) => {
    const { build } = momentOf(engine, 'check to answer', 'last-look')
    const at = await benchAt(shown, build)
    const { spec, state } = at.openBuild
    const of = (id: string) => {
      const step = spec.steps.find((each) => each.id === id)!
      const opened = openedAgain(spec, state, step)
      return { ...at, step, opened, lead: shown.language.words.plan.opens, undone: false }
    }
    return {
      'much to undo': of('case-run'),
      'nothing else': of('sump-run'),
      undone: { ...of('sump-on'), undone: true },
    }
  }),
  paper('Plan on the sheet', 'What was skipped, and what was done again', SheetPlan, () => {
    const { build } = momentOf(engine, 'step skipped', 'flange-true')
    const again = build.branch()
    again.does({ type: 'redo-step', step: 'turn-crank', reason: 'A bolt was loose', opens: ['flange-true'] })
    const sheetOf = ({ engine: { spec }, entries }: typeof build) => buildSheet(spec, entries)
    return { skipped: { sheet: sheetOf(build) }, 'taken back, and done again': { sheet: sheetOf(again) } }
  }),
]
