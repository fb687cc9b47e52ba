import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import { partsWanted } from '../../../core/builds/index.ts'
import { en } from '../../../core/words/index.ts'
import { wholeOrderCsv } from '../../../renderer/tray/csv.ts'
import { Workshop } from '../../core/builds/workshop.ts'
import { demo } from '../../core/layout/demos.ts'

const moor = demo('moor-flat-4')

function linesOf(shop: Workshop): readonly Record<string, string>[] {
  const csv = wholeOrderCsv(en, [], partsWanted(shop.spec, shop.state))
  return Papa.parse<Record<string, string>>(csv.replace(/^\ufeff/, ''), {
    header: true,
    skipEmptyLines: true,
  }).data
}

describe('the list of what has to be got, as a spreadsheet reads it', () => {
  it('has a line for each part of the list that is not in, and one for bolts that are new each time', () => {
    const lines = linesOf(new Workshop(moor))
    const parts = lines.filter(({ what }) => what === 'part')
    expect(parts.map(({ name }) => name)).toEqual(moor.parts.map(({ name }) => name))
    expect(parts.find(({ name }) => name === 'Thrust washer')).toMatchObject({
      ...{ count: '2', place: 'at saddle 3, one on each side', for: 'Lay crank' },
    })
    const bolts = lines.filter(({ what }) => what === 'fasteners')
    const fresh = moor.fastenerGroups.filter(({ reuse }) => reuse === 'new-each-time')
    expect(bolts.map(({ name }) => name)).toEqual(fresh.map(({ name }) => name))
    const count = moor.fasteners.filter(({ group }) => group === fresh[0]!.id).length
    expect(bolts[0]?.count).toBe(String(count))
  })

  it('has what is still missing of a part that is half in, and nothing of one that is in', () => {
    const shop = new Workshop(moor)
    shop.worksUpTo('lay-crank')
    const tick = { type: 'tick-parts', step: 'lay-crank', part: 'thrust-washers', count: 1 } as const
    const as = { condition: 'new', reason: '', number: '' } as const
    const count = () => linesOf(shop).find(({ name }) => name === 'Thrust washer')?.count
    shop.does({ ...tick, ...as })
    expect(count()).toBe('1')
    shop.does({ ...tick, ...as })
    expect(count()).toBeUndefined()
  })

  it('runs nothing that was typed like a formula', () => {
    const named = { ...moor, parts: [{ ...moor.parts[0]!, name: '=cmd()' }] }
    const csv = wholeOrderCsv(en, [], partsWanted(named, new Workshop(moor).state))
    expect(csv).toContain("'=cmd()")
    expect(csv).not.toMatch(/^=/m)
  })
})
