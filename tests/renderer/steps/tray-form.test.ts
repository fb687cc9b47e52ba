import { describe, expect, it } from 'vitest'
import { TrayForm } from '../../../renderer/steps/shells/tray-form.svelte.ts'
import { demo } from '../../core/layout/demos.ts'

const [fit] = demo('skerry-3').fits
const [first, second] = fit!.grades.map(({ grade }) => grade)
const wall = { typed: '', unit: 'mm' } as const

describe('what the record calls the shells in the tray', () => {
  it('is the same in every language: grade, undersize and a sign for the half', () => {
    const form = new TrayForm(fit!, [null], 'mm', null)
    form.halves = 'differ'
    form.addSingle()
    const labels = form.lines.map(({ label }) => label)
    expect(labels.slice(0, 2)).toEqual(
      fit!.split === 'upper-lower' ? [`${first} ↑`, `${first} ↓`] : [`${first} ←`, `${first} →`],
    )
    expect(labels.at(-1)).toBe('#1')
    expect(new Set(labels).size).toBe(labels.length)
    form.halves = 'alike'
    expect(form.lines.map(({ label }) => label)[0]).toBe(first)
  })

  it('has an undersize by what comes off, in the unit of the bench: the name of the spec is in a language', () => {
    const { key } = fit!.undersizes[0]!.name
    const labelIn = (unit: 'mm' | 'in') => new TrayForm(fit!, [key], unit, null).lines[0]!.label
    expect(labelIn('mm')).toBe(`${first} 0.25 mm ↑`)
    // 0.25 ÷ 25.4 = 0.00984.
    expect(labelIn('in')).toBe(`${first} 0.0098 in ↑`)
  })

  it('keeps the label of a compartment that was noted with the name of its undersize', () => {
    const { key } = fit!.undersizes[0]!.name
    const line = { label: `${first} ${key}`, grade: first!, undersize: key, half: 'either' as const }
    const form = new TrayForm(fit!, [key], 'mm', {
      halves: 'alike',
      lines: [{ ...line, count: 2, wall: null }],
    })
    expect(form.lines[0]).toMatchObject({ ...line, count: '2' })
  })

  it('stays what an earlier version wrote in its language, so that what was chosen from it is found', () => {
    const common = { undersize: null, wall: null }
    const form = new TrayForm(fit!, [null], 'mm', {
      halves: 'differ',
      lines: [
        { ...common, label: `${first} oben`, grade: first!, half: 'upper', count: 3 },
        {
          ...common,
          label: 'Schale 1',
          grade: second!,
          half: 'lower',
          count: 1,
          wall: { length_nm: 1_490_000, ...wall, typed: '1,49' },
        },
      ],
    })
    expect(form.lines).toContainEqual({
      ...common,
      label: `${first} oben`,
      grade: first!,
      half: 'upper',
      count: '3',
      wall,
    })
    expect(form.singles.map(({ label, count }) => [label, count])).toEqual([['Schale 1', '1']])
    form.addSingle()
    expect(form.singles.map(({ label }) => label)).toEqual(['Schale 1', '#2'])
  })
})
