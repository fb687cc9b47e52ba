import { describe, expect, it } from 'vitest'
import { acceptedDoubts } from '../../../core/audit/index.ts'
import { auditAfter, demoDraft, specOf, type Draft } from '../engine/demo.ts'

describe('the standing caution', () => {
  it('is asked for', () => {
    expect(auditAfter('skerry-3', (spec) => spec.cautions.shift())).toEqual([
      "doubt standing-caution-missing cautions: No caution says that the maker's current manual and a qualified person " +
        'overrule this program. Add one for all steps.',
    ])
  })

  it('must stand beside all steps, not beside some', () => {
    expect(
      auditAfter('skerry-3', (spec) => Object.assign(spec.cautions[0] ?? {}, { steps: ['lay-crank'] })),
    ).toHaveLength(1)
  })
})

describe('entered numbers', () => {
  const entered = (checkedBy?: string) =>
    auditAfter('skerry-3', (spec: Draft) => {
      spec.source = {
        kind: 'entered',
        from: 'Shop notes',
        enteredBy: 'Ada Brook',
        on: '2026-03-31',
        ...(checkedBy && { checkedBy }),
      }
    })

  it('that a second person has checked are good', () => {
    expect(entered('Jon Vale')).toEqual([])
  })

  it('that nobody, or the same person, has checked are doubted', () => {
    expect(entered()).toEqual([
      expect.stringContaining('doubt source-unchecked source.checkedBy: The numbers were entered'),
    ])
    expect(entered('ada brook')).toEqual([
      expect.stringContaining('doubt source-checked-by-same source.checkedBy'),
    ])
  })
})

describe('a doubt that somebody accepted', () => {
  const draft = () => {
    const spec = demoDraft('skerry-3')
    spec.source = { kind: 'entered', from: 'Shop notes', enteredBy: 'Ada Brook', on: '2026-03-31' }
    return spec
  }
  const accepted = { reason: 'Only engine of its kind', by: 'Bo Lind', on: '2026-04-01' }

  it('is given with its reason, and not once it is no doubt any more', () => {
    const spec = draft()
    spec.accepted = [
      { ...accepted, code: 'source-unchecked', path: 'source.checkedBy' },
      { ...accepted, code: 'bores-overlap', path: 'case.pitch' },
    ]
    expect(acceptedDoubts(specOf(spec))).toMatchObject([
      { reason: 'Only engine of its kind', doubt: { code: 'source-unchecked' } },
    ])
    if (spec.source.kind === 'entered') spec.source.checkedBy = 'Bo Lind'
    expect(acceptedDoubts(specOf(spec))).toEqual([])
  })
})
