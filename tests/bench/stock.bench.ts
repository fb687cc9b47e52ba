import fc from 'fast-check'
import highsLoader from 'highs'
import { assignFromTray, orderList } from '../../core/bearing/index.ts'
import { orderWeight, stockModel } from '../core/bearing/tray/stock-model.ts'
import { benches } from '../core/bearing/tray/trays.ts'
import type { Measure } from './measure.ts'

const cases = 500
/** Fixed, so that two machines and two versions answer the same trays. */
const seed = 20_260_101

/** The quickest of some runs: what the machine does besides only ever adds. */
function quickest<Answer>(
  runs: number,
  solve: () => Answer,
): { readonly answer: Answer; readonly ms: number } {
  let ms = Infinity
  let answer: Answer
  do {
    const from = performance.now()
    answer = solve()
    ms = Math.min(ms, performance.now() - from)
  } while (--runs > 0)
  return { answer, ms }
}

function meanMs(timed: readonly { readonly ms: number }[]): number {
  return timed.reduce((total, { ms }) => total + ms, 0) / timed.length
}

export const measures: readonly Measure[] = [
  {
    name: 'shells from stock, 7 mains × 2 halves, 9 grades',
    bar: 'the optimum of HiGHS on all 500 trays, and at least 50 times as fast',
    take: async () => {
      const highs = await highsLoader()
      const trays = fc.sample(benches, { numRuns: cases, seed })
      const models = trays.map(({ fit, tray, bearings }) => stockModel(fit, tray, bearings))
      const solve = ({ fit, tray, bearings }: (typeof trays)[number]) => assignFromTray(fit, tray, bearings)
      // Neither is compiled before its first use, so both run once before they are timed.
      trays.forEach(solve)
      models.slice(0, 20).forEach((model) => highs.solve(model))
      const ours = trays.map((bench) => quickest(5, () => solve(bench)))
      const theirs = models.map((model) =>
        quickest(3, () => highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0 })),
      )

      const equal = ours.filter(({ answer }, index) => {
        if (!answer.ok) return false
        const ordered = orderList(answer.value).reduce((total, { count }) => total + count, 0)
        const cost = ordered * orderWeight + answer.value.squaredDeviation
        return answer.value.proved && Math.abs(cost - theirs[index]!.answer.ObjectiveValue) < 1e-3
      }).length
      const [ourMeanMs, highsMeanMs] = [meanMs(ours), meanMs(theirs)]
      const ratio = highsMeanMs / ourMeanMs
      return {
        values: { cases, equal, ourMeanMs, highsMeanMs, ratio },
        holds: equal === cases && ratio >= 50,
      }
    },
  },
]
