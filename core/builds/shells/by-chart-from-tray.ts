import type { BearingCase } from './bearing-at.ts'
import type { NotedTray } from '../events/bearing-record.ts'
import type { Half } from '../events/events.ts'
import { proposalAt, type BearingProposal, type ProposedHalf } from './proposal-at.ts'

/**
 * What bearings take from the tray whose grades a chart or a person gives without sizes to compute a clearance from; what
 * the tray lacks is to be ordered. `left` is the tray without it.
 */
export function takeByChart(
  { halves, lines }: NotedTray,
  cases: readonly BearingCase[],
): { readonly byChart: ReadonlyMap<string, BearingProposal>; readonly left: NotedTray } {
  const counts = new Map(lines.map(({ label, count }) => [label, count]))

  function take(bearing: BearingCase, half: Half, shell: ProposedHalf): ProposedHalf {
    const pin = bearing.pins?.[half] ?? null
    const found = lines.find((line) => {
      if ((counts.get(line.label) ?? 0) === 0 || line.undersize !== bearing.undersize) return false
      if (halves === 'differ' && line.half !== half && line.half !== 'either') return false
      // A shell with a measured wall lies there for a bearing that can be computed.
      return pin !== null && 'label' in pin
        ? line.label === pin.label
        : line.wall === null && line.grade === shell.grade
    })
    if (found === undefined) return { ...shell, label: null }
    counts.set(found.label, counts.get(found.label)! - 1)
    return { ...shell, grade: found.grade, label: found.label }
  }

  const byChart = new Map<string, BearingProposal>()
  for (const bearing of cases) {
    const proposal = proposalAt(bearing)
    const { position, upper, lower, clearance } = proposal
    if (upper === null || lower === null || clearance !== null) continue
    byChart.set(position, {
      ...proposal,
      upper: take(bearing, 'upper', upper),
      lower: take(bearing, 'lower', lower),
    })
  }
  const left = lines.map((line) => ({ ...line, count: counts.get(line.label)! }))
  return { byChart, left: { halves, lines: left } }
}
