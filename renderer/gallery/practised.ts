import type { EngineSpec } from '../../core/engine/index.ts'
import {
  answerOrder,
  beginOrder,
  chartDrill,
  chartTally,
  judgeChart,
  orderDrill,
  seedOf,
  type ChartVerdict,
  type Round,
  type Tally,
} from '../../core/practice/index.ts'

/** The order of a pass gone through with the last fastener named too early at some places, counted from 0. */
export function playOrder(spec: EngineSpec, seed: string, slips: readonly number[]): Tally {
  const drill = orderDrill(spec, seed)!
  let attempt = beginOrder(drill)
  const say = (fastener: string) => {
    attempt = answerOrder(spec, attempt, { kind: 'fastener', fastener }).attempt
  }
  for (const [place, fastener] of drill.key.entries()) {
    if (slips.includes(place)) say(drill.key.at(-1)!)
    say(fastener)
  }
  if (drill.after === null) return attempt.tally
  attempt = answerOrder(spec, attempt, { kind: 'pass-complete' }).attempt
  return answerOrder(spec, attempt, { kind: 'after', pass: drill.after.key }).attempt.tally
}

/** The shells of a crankcase, with a wrong upper one tried first at some bearings, counted from 0. */
function playChart(spec: EngineSpec, seed: string, slips: readonly number[]): Tally {
  const { fit, questions } = chartDrill(spec, seed)!
  return questions.flatMap((question, place) => {
    const { upper, lower } = question.key
    const other = fit.grades.find(({ grade }) => grade !== upper)!.grade
    const tries: ChartVerdict[] = [judgeChart(fit, question, question.key)]
    if (slips.includes(place)) tries.unshift(judgeChart(fit, question, { upper: other, lower }))
    return chartTally(question, tries)
  })
}

/** What one person practised of an engine in some days of a winter. */
export function practisedOf(spec: EngineSpec): readonly Round[] {
  const order = (rounds: number, slips: readonly number[]) =>
    playOrder(spec, seedOf(spec.id, 'order', rounds), slips)
  const chart = (rounds: number, slips: readonly number[]) =>
    playChart(spec, seedOf(spec.id, 'chart', rounds), slips)
  const of = { engine: spec.id }
  return [
    { ...of, drill: 'order', tally: order(0, [1, 4]), seconds: 212, at: '2026-02-16T07:05:00.000Z' },
    { ...of, drill: 'order', tally: order(1, [2]), seconds: 174, at: '2026-02-17T07:02:00.000Z' },
    { ...of, drill: 'chart', tally: chart(0, [1]), seconds: 96, at: '2026-02-17T07:06:00.000Z' },
    { ...of, drill: 'order', tally: order(4, []), seconds: 121, at: '2026-02-19T07:04:00.000Z' },
    { ...of, drill: 'chart', tally: chart(1, []), seconds: 88, at: '2026-02-27T07:03:00.000Z' },
  ]
}
