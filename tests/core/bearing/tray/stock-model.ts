import type { OpenBearing, Tray } from '../../../../core/bearing/index.ts'
import type { Fit } from '../../../../core/engine/index.ts'

/** More than the squared deviations of seven bearings inside limits 24 µm apart can come to, in µm². */
export const orderWeight = 2000

/**
 * The same question as a mixed-integer program in CPLEX LP format, set up from the sizes alone and for one solver to
 * answer in one go: one binary for each bearing and pair of grades that is allowed and inside the limits, one shortage for
 * each part, and an order that outweighs any deviation. Standard sizes, unmeasured walls, nothing pinned.
 */
export function stockModel(fit: Fit, tray: Tray, bearings: readonly OpenBearing[]): string {
  const objective: string[] = []
  const choose: string[] = []
  const used = new Map<string, string[]>()
  const binaries: string[] = []
  const use = (grade: string, half: 'upper' | 'lower', variable: string) => {
    const part = tray.halves === 'alike' ? grade : `${grade}_${half}`
    used.set(part, [...(used.get(part) ?? []), variable])
  }
  for (const [at, { sizes }] of bearings.entries()) {
    const terms: string[] = []
    for (const [u, upper] of fit.grades.entries())
      for (const [l, lower] of fit.grades.entries()) {
        const thickerHalf = u > l ? 'upper' : 'lower'
        const mixed =
          fit.mixing.neighbours &&
          Math.abs(u - l) === 1 &&
          (fit.mixing.thicker === 'either' || fit.mixing.thicker === thickerHalf)
        if (u !== l && !mixed) continue
        const least = sizes.bore.least - sizes.journal.most - upper.wall!.upTo - lower.wall!.upTo
        const most = sizes.bore.most - sizes.journal.least - upper.wall!.over - lower.wall!.over
        if (least < fit.clearance.least || most > fit.clearance.most) continue
        const variable = `x_${at}_${u}_${l}`
        const off = ((least + most) / 2 - (fit.clearance.least + fit.clearance.most) / 2) / 1000
        terms.push(variable)
        objective.push(`${(off * off).toFixed(9)} ${variable}`)
        use(upper.grade, 'upper', variable)
        use(lower.grade, 'lower', variable)
      }
    binaries.push(...terms)
    if (terms.length > 0) choose.push(` choose_${at}: ${terms.join(' + ')} = 1`)
  }
  const enough: string[] = []
  const shortages: string[] = []
  for (const [part, variables] of used) {
    const [grade, half = 'either'] = part.split('_')
    const count = tray.lines.find((each) => each.grade === grade && each.half === half)?.count ?? 0
    shortages.push(`short_${part}`)
    objective.push(`${orderWeight} short_${part}`)
    enough.push(` enough_${part}: ${variables.join(' + ')} - short_${part} <= ${count}`)
  }
  return [
    'Minimize',
    ` total: ${objective.join(' + ')}`,
    'Subject To',
    ...choose,
    ...enough,
    'Bounds',
    ...shortages.map((each) => ` 0 <= ${each} <= 14`),
    'General',
    ` ${shortages.join(' ')}`,
    'Binary',
    ` ${binaries.join(' ')}`,
    'End',
    '',
  ].join('\n')
}
