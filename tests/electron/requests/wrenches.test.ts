import { describe, expect, it } from 'vitest'
import type { WrittenWrench } from '../../../core/contract/index.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'

const click: WrittenWrench = {
  id: 'click-100',
  name: 'Click 20–100',
  range: { least: '20 N·m', most: '100 N·m' },
  scale: { unit: 'N·m', step: 0.5 },
  length: '450 mm',
  adapters: [{ id: 'crowfoot', name: 'Crowfoot 17', offset: '40 mm', angle: '0 °' }],
  calibration: { on: '2026-03-31', cycles: 1200 },
}

describe("the shop's wrenches", () => {
  it('are none on a new bench', async () => {
    const { get } = asking(await store(folder()))
    expect(await get('wrenches.list', {})).toEqual([])
  })

  it('are kept as they were written, over a new start too', async () => {
    const inFolder = folder()
    const first = await store(inFolder)
    await asking(first).get('wrenches.keep', { wrench: click })
    first.close()
    expect(await asking(await store(inFolder)).get('wrenches.list', {})).toEqual([click])
  })

  it.each([
    ['a reversed range', { range: { least: '100 N·m', most: '20 N·m' } }, 'wrench.range'],
    [
      'an adapter longer than the wrench',
      { adapters: [{ id: 'long', name: 'Long', offset: '460 mm', angle: '0 °' }] },
      'wrench.adapters.0.offset',
    ],
    ['a range without a unit', { range: { least: '20', most: '100 N·m' } }, 'wrench.range.least'],
    ['a step of nothing', { scale: { unit: 'N·m', step: 0 } }, 'wrench.scale.step'],
    ['a class that ISO 6789 has not', { made: { type: 'II', class: 'X' } }, 'wrench.made.class'],
    ['a date that is not there', { calibration: { on: '2026-02-30', cycles: 1 } }, 'wrench.calibration.on'],
  ] as const)('are not kept with %s, and the list stays as it was', async (_, wrong, path) => {
    const { ask, get } = asking(await store(folder()))
    await get('wrenches.keep', { wrench: click })
    const answer = await ask('wrenches.keep', { wrench: { ...click, ...wrong } as WrittenWrench })
    expect(answer).toMatchObject({ ok: false, problem: { path } })
    expect(await get('wrenches.list', {})).toEqual([click])
  })

  it('leave out one that can no longer be read', async () => {
    const record = await store(folder())
    record.keepPreferences({ wrenches: [{ id: 'old' }, click] })
    expect(await asking(record).get('wrenches.list', {})).toEqual([click])
  })

  it('lose none that cannot be read when the list is kept: a newer program finds it again', async () => {
    const record = await store(folder())
    const newer = { id: 'beam-60', range: 'as a newer program writes it' }
    record.keepPreferences({ wrenches: [newer, click] })
    const { get } = asking(record)
    expect(await get('wrenches.keep', { wrench: { ...click, name: 'Click, bench 2' } })).toHaveLength(1)
    expect(await get('wrenches.remove', { id: click.id })).toEqual([])
    expect(record.preferences()['wrenches']).toEqual([newer])
  })
})
