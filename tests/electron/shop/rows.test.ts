import { describe, expect, it } from 'vitest'
import { benchIn, buildIn, entryIn, itemIn, type BuildRow } from '../../../electron/shop/postgres/rows.ts'

const bench = '0123456789ab'
const at = new Date('2026-11-02T08:00:01.000Z')
const row: BuildRow = {
  ...{ id: '01956f6c-8a00-7000-8000-000000000001', year: 2026, ordinal: 1, name: 'Ferry', serial: 'F-201' },
  ...{ spec_sha256: Buffer.alloc(32), started_at: at, last_at: at, finished: false, voided: false },
  ...{ flagged: false, holder: bench, standing: null, entries: 1, head_sha256: Buffer.alloc(32), bench },
  ...{ received_at: at, forked: false, change: '7', engine: 'Ferry 4', demo: true },
}
const never = new Date(NaN)
const unreadable = expect.objectContaining({ code: 'SHOP_ANSWER' }) as Error

describe('a row of the archive', () => {
  it('is read as it is', () => {
    expect(buildIn(row)).toMatchObject({ name: 'Ferry', change: 7, lastAtUtc: '2026-11-02T08:00:01.000Z' })
  })

  it.each<[string, Partial<Record<keyof BuildRow, unknown>>]>([
    ['a date that no calendar has', { last_at: never }],
    ['a year of five digits', { started_at: new Date(Date.UTC(20_000, 0)) }],
    ['a bench that is none', { holder: 'Bench 2' }],
    ['a change that is no number', { change: 'soon' }],
    ['a hash of another length', { spec_sha256: Buffer.alloc(20) }],
    ['nothing where there should be something', { name: null }],
    ['another kind', { received_at: 'today' }],
  ])('is not believed with %s', (_, odd) => {
    expect(() => buildIn({ ...row, ...odd } as BuildRow)).toThrow(unreadable)
  })

  it('of an entry, a bench or an item is not believed either where it cannot be', () => {
    const entry = { seq: 1, body: '{}', sha256: Buffer.alloc(32), bench }
    expect(entryIn(entry)).toMatchObject({ seq: 1 })
    expect(() => entryIn({ ...entry, seq: 0 })).toThrow(unreadable)
    expect(() => entryIn({ ...entry, sha256: null as unknown as Buffer })).toThrow(unreadable)
    expect(() => benchIn({ id: bench, name: '', program: '1', seen_at: at })).toThrow(unreadable)
    expect(() => itemIn({ id: 'ana', json: '{}', at: never, bench })).toThrow(unreadable)
  })
})
