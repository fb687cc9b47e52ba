import { demoEngine, Workshop } from './workshop.ts'

export const skerry = demoEngine('skerry-3')
export const mains = skerry.fits.find(({ id }) => id === 'mains')!
/** The step that chooses the main shells. */
export const choosing = 'choose-mains'

/** Case and crank marked as given; mains have two planes of three directions. */
export function marked(housing = '1 2 3 2', journal = 'H G F G'): Workshop {
  const shop = new Workshop(skerry)
  shop.does({ type: 'note-marks', step: 'case-marks', typed: housing })
  shop.does({ type: 'note-marks', step: 'crank-marks', typed: journal })
  return shop
}

/** One size in every cell of a part, or six of them, as the command takes them. */
export function readings(
  position: string,
  part: 'housing' | 'journal',
  typed: string | readonly string[],
  more: { unit?: 'mm' | 'in'; at?: string; gauge?: string; uncertainty?: string } = {},
) {
  const six = typeof typed === 'string' ? Array<string>(6).fill(typed) : typed
  const cells = six.map((each) => ({ typed: each, unit: more.unit ?? ('mm' as const) }))
  return {
    type: 'note-readings' as const,
    ...{ step: choosing, position, part, cells: [cells.slice(0, 3), cells.slice(3)] },
    partTemperature: more.at ?? '',
    gaugeTemperature: more.gauge ?? '',
    uncertainty: more.uncertainty ?? '',
  }
}
