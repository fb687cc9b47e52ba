import { expect, it } from 'vitest'
import { en } from '../../../core/words/index.ts'
import { momentOf } from '../../../renderer/gallery/at-bench.ts'
import { labelRows, orderRows } from '../../../renderer/tray/tray-rows.ts'
import { labelsCsv, orderCsv } from '../../../renderer/tray/csv.ts'

it('halves of a case that is split upright are left and right on labels and orders, those of rods upper and lower', () => {
  const { build } = momentOf('moor-flat-4', 'half of the shells fitted')
  const { spec } = build.engine
  const labels = labelRows(spec, build.state, 'F-7')
  expect(labels.map(({ code }) => code)).toEqual(
    expect.arrayContaining(['BEDPLATE F-7 M1 LEFT', 'BEDPLATE F-7 M3 RIGHT', 'BEDPLATE F-7 B4 LOWER']),
  )
  expect(labelsCsv(en, labels)).toMatch(/^M1,left,/m)
  const orders = orderCsv(en, orderRows(en, spec, build.state))
  expect(orders).toMatch(/^Main bearings,\w+,standard,left or right,\d+,"M1 left, M1 right/m)
  expect(orders).toMatch(/^Big ends,\w+,standard,upper or lower,\d+,"B1 upper/m)
})
