import { describe, expect, it } from 'vitest'
import { acceptedDoubts, audit, numbersOf } from '../../../core/audit/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { auditAfter, demoDraft, demoText, specOf, type Draft } from '../engine/demo.ts'

describe('the standing caution', () => {
  it('is asked for', () => {
    expect(auditAfter('skerry-3', (spec) => spec.cautions.shift())).toEqual([
      'doubt standing-caution-missing cautions',
    ])
  })

  it.each(['de', 'es'] as const)('is found in a spec that is read in another language: %s', (language) => {
    const read = readSpec(demoText('skerry-3'), language)
    if (!read.ok) throw new Error('it cannot be read')
    expect(audit(read.spec)).toEqual([])
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

  it('that nobody has checked are doubted', () => {
    expect(entered()).toEqual([
      expect.stringContaining('doubt source-unchecked source.checkedBy: enteredBy=Ada Brook'),
    ])
  })

  // As a person types it again: another case, blanks, full-width letters, a Cyrillic А that looks like the A.
  it.each(['Ada Brook', 'ada brook', 'Ada  Brook', 'Ada\u00A0Brook', 'Ａｄａ Ｂｒｏｏｋ', '\u0410da Brook'])(
    'that the same person has checked are doubted, however the name is written: %s',
    (checkedBy) => {
      expect(entered(checkedBy)).toEqual([
        expect.stringContaining('doubt source-checked-by-same source.checkedBy'),
      ])
    },
  )

  it('that somebody of another name has checked are good, however much alike the names are', () => {
    for (const checkedBy of ['Ada Brooks', 'Ada Broök', 'A. Brook']) expect(entered(checkedBy)).toEqual([])
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

describe('an accepted doubt', () => {
  /** What is said of an undersize of the mains, the doubt of 2.1 mm accepted with these numbers. */
  const undersize = (size: string, numbers: readonly number[] | undefined) => {
    const spec = demoDraft('skerry-3')
    spec.fits[0]!.undersizes = [{ name: 'large', undersize: size }]
    const accepted = { code: 'undersize-large', reason: 'A racing crank', by: 'Bo Lind', on: '2026-04-01' }
    spec.accepted = [
      { ...accepted, path: said(spec).problem.path, ...(numbers && { numbers: [...numbers] }) },
    ]
    return said(spec)
  }
  const said = (spec: Draft) => audit(specOf(spec)).find(({ problem }) => problem.code === 'undersize-large')!

  it('stays one while it says the same numbers, and is open again with others', () => {
    const numbers = numbersOf(undersize('2.1 mm', undefined).problem)
    expect(numbers).toContain(2.1)
    expect(undersize('2.1 mm', numbers).accepted?.reason).toBe('A racing crank')
    expect(undersize('2.2 mm', numbers).accepted).toBeUndefined()
    expect(undersize('2.2 mm', undefined).accepted?.by).toBe('Bo Lind')
  })

  it('is no way past a fault', () => {
    const spec = demoDraft('skerry-3')
    spec.steps.at(-1)!.after = [spec.steps.at(-1)!.id]
    const path = `steps[${spec.steps.length - 1}].after`
    spec.accepted = [{ code: 'steps-in-a-ring', path, reason: 'No', by: 'Bo Lind', on: '2026-04-01' }]
    expect(audit(specOf(spec))).toMatchObject([{ weight: 'fault', problem: { code: 'steps-in-a-ring' } }])
    expect(audit(specOf(spec))[0]).not.toHaveProperty('accepted')
    expect(acceptedDoubts(specOf(spec))).toEqual([])
  })
})
