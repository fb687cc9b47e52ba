import { z } from 'zod'
import type { Torque, TorqueUnit } from '../quantity/index.ts'
import { advise } from './advice.ts'
import { printedTorqueText } from './text.ts'

/**
 * What it may take to turn the crank, as the maker's manual gives it: at most, at least, and by how much it may rise from one
 * reading to the next. A rise is what one cap more may cost: a shell that binds shows there first.
 */
export const turning = z
  .strictObject({
    least: printedTorqueText.optional(),
    most: printedTorqueText.optional(),
    mostRise: printedTorqueText.optional(),
  })
  .refine((limits) => Object.values(limits).some((limit) => limit !== undefined), advise('turning-empty'))
  .transform(({ least, most, mostRise }): TurningTorque => {
    const unit = (most ?? mostRise ?? least)?.unit ?? 'N·m'
    return {
      least: least?.torque ?? null,
      most: most?.torque ?? null,
      mostRise: mostRise?.torque ?? null,
      unit,
    }
  })

/** Limits of a turning torque; null where the manual gives none. */
export interface TurningTorque {
  readonly least: Torque | null
  readonly most: Torque | null
  /** From the reading before. */
  readonly mostRise: Torque | null
  /** In which the manual prints it. */
  readonly unit: TorqueUnit
}
