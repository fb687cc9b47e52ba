import type { BuildSheet } from '../../../core/builds/index.ts'
import { en } from '../../../core/words/index.ts'
import { takenWith } from './taken-with.ts'

/** What was read of bores and journals, cell by cell, as far as it still counts; the gauge's own temperature is not taken off. */
export function sizeRows({ fits }: BuildSheet) {
  return fits.flatMap((fit) =>
    fit.rows.flatMap(({ position, measured }) =>
      (['housing', 'journal'] as const).flatMap((part) => {
        const readings = measured[part]
        if (readings === null) return []
        return readings.cells.flatMap((plane, planeAt) =>
          plane.map((cell, directionAt) => ({
            ...entryFields(readings.noted),
            what: en.record.tables.size({
              ...{ fit: fit.name, position, part: fit[part].part, plane: planeAt + 1 },
              direction: directionAt + 1,
            }),
            ...{ typed: cell.typed, value: cell.length_nm / 1e6, unit: 'mm' },
            ...{ least: null, most: null, limits_unit: null, verdict: '', counts: 'yes', note: '' },
            ...takenWith(cell.readWith),
          })),
        )
      }),
    ),
  )
}

/** The entry that says it, in a table; nothing where nobody said it. */
export function entryFields(stamp: BuildSheet['started']) {
  return { entry: stamp?.seq ?? null, time_utc: stamp?.at ?? null, person: stamp?.person ?? null }
}
