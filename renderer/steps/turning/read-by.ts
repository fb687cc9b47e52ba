import { withUnit, type TorqueUnit } from '../../../core/quantity/index.ts'

/** How a turning torque is read: off a torque wrench or gauge, or by a spring balance on a lever, which is so long as typed. */
export interface ReadBy {
  readonly by: 'wrench' | 'balance'
  readonly arm: string
}

/** What a spring balance shows where nothing else is typed. */
export const balanceUnit = 'N'

/** What was typed as it is recorded: `2.1 N·m`, or `8 N × 250 mm`; as it is where nothing was typed. */
export function readAs(typed: string, { by, arm }: ReadBy, unit: TorqueUnit): string {
  if (typed.trim() === '') return ''
  if (by === 'wrench') return withUnit(typed, unit)
  return `${withUnit(typed, balanceUnit)} × ${withUnit(arm, 'mm')}`
}
