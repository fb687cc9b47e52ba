import { describe, expect, it } from 'vitest'
import { buildSheet, checkRules, type RecordedEvent } from '../../../../core/builds/index.ts'
import { choosing as step, marked, readings, skerry } from '../main-shells.ts'
import { newBuild, type Workshop } from '../workshop.ts'

const sheetOf = (shop: Workshop) => buildSheet(skerry, shop.entries)
const M1 = (shop: Workshop) => sheetOf(shop).fits.find(({ rows }) => rows[0]!.position === 'M1')!.rows[0]!

function againstRules(entries: readonly RecordedEvent[]) {
  const checking = checkRules(skerry, newBuild.specSha256, entries)
  for (;;) {
    const { done, value } = checking.next()
    if (done === true) return value
  }
}

/** The entries as a version of the program left them that did not record the answers. */
function withoutAnswers({ entries }: Workshop): readonly RecordedEvent[] {
  return entries.map((entry) => {
    const { sure: _, arrived: __, ...event } = { sure: null, arrived: null, ...entry.event }
    return { ...entry, event }
  })
}

/** Six readings of a journal of which the last was read 50 µm too large. */
const off = [...Array<string>(5).fill('52.000'), '52.050']

describe('a reading that does not go with the others', () => {
  it('is asked about, and that it was asked about stands in the entry and on the sheet', () => {
    const shop = marked()
    expect(shop.refusal(readings('M1', 'journal', off))).toMatchObject({
      code: 'reading-outlier',
      facts: {
        place: 'M1',
        plane: 2,
        direction: 3,
        size: { amount: 52.05, decimals: 3, isShort: false, unit: 'mm' },
        middle: { amount: 52, decimals: 3, isShort: false, unit: 'mm' },
      },
    })
    const noted = shop.does({ ...readings('M1', 'journal', off), sure: true })
    expect(noted).toMatchObject([{ type: 'readings-noted', sure: true }])
    expect(M1(shop).measured.journal).toMatchObject({ sure: true })
    expect(againstRules(shop.entries)).toBeNull()
    expect(againstRules(withoutAnswers(shop))).toBeNull()
  })

  it('leaves no answer where nothing was asked', () => {
    const shop = marked()
    const [noted] = shop.does({ ...readings('M1', 'journal', '52.000'), sure: true })
    expect(noted).not.toHaveProperty('sure')
    expect(M1(shop).measured.journal).not.toHaveProperty('sure')
    const last = shop.entries.at(-1)!
    const forged = { ...last, event: { ...last.event, sure: true } as RecordedEvent['event'] }
    expect(againstRules([...shop.entries.slice(0, -1), forged])).toMatchObject({
      entry: last.seq,
      why: { code: 'entry-not-as-decided' },
    })
  })
})

describe('a shell that was still to be ordered', () => {
  const half = { type: 'fit-half', step: 'fit-mains', position: 'M1', half: 'upper' } as const

  it('goes in once a person says that it has arrived, which stands in the entry and on the sheet', () => {
    const shop = marked()
    const none = { label: 'T', grade: 'T', undersize: null, half: 'either', count: '0' } as const
    const lines = [{ ...none, wall: { typed: '', unit: 'mm' as const } }]
    shop.does({ type: 'note-tray', step, halves: 'alike', lines })
    shop.worksUpTo('fit-mains')
    expect(M1(shop).upper).toMatchObject({ label: null, arrived: false })
    expect(() => shop.does(half)).toThrow('ordered')
    expect(shop.does({ ...half, arrived: true })).toMatchObject([{ type: 'half-fitted', arrived: true }])
    expect(M1(shop).upper).toMatchObject({ label: null, arrived: true })
    expect(againstRules(shop.entries)).toBeNull()
    expect(againstRules(withoutAnswers(shop))).toBeNull()
  })

  it('is a question only of such a shell', () => {
    const shop = marked()
    shop.worksUpTo('fit-mains')
    expect(shop.does({ ...half, arrived: true })[0]).not.toHaveProperty('arrived')
  })
})
