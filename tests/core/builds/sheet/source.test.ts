import { describe, expect, it } from 'vitest'
import { buildSheet } from '../../../../core/builds/index.ts'
import { sentenceOf } from '../../../../core/problem/index.ts'
import { en } from '../../../../core/words/index.ts'
import { demoDraft, specOf } from '../../engine/demo.ts'

describe('the sheet of an engine that a person entered', () => {
  const entered = demoDraft('skerry-3')
  entered.source = { kind: 'entered', from: 'Shop notes', enteredBy: 'Ada Brook', on: '2026-03-31' }
  const why = { reason: 'Only engine of its kind', by: 'Bo Lind', on: '2026-04-01' }
  entered.accepted = [{ code: 'source-unchecked', path: 'source.checkedBy', ...why }]
  const sheet = buildSheet(specOf(entered), [])

  it('says in its head that nobody checked the numbers', () => {
    const { source } = sheet.engine
    if (source.kind !== 'entered') throw new Error('it is a demo')
    const { from, enteredBy, checkedBy = null } = source
    expect(en.sheet.head.source({ from, enteredBy, checkedBy })).toBe(
      'Shop notes; entered by Ada Brook, not checked',
    )
  })

  it('has each doubt that somebody accepted, with the reason', () => {
    expect(
      sheet.accepted.map(({ doubt, reason, by }) => [sentenceOf(doubt).slice(0, 40), reason, by]),
    ).toEqual([['The numbers were entered by Ada Brook an', 'Only engine of its kind', 'Bo Lind']])
  })
})
