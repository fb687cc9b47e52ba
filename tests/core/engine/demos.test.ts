import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { acceptedDoubts } from '../../../core/audit/index.ts'
import { families } from '../../../core/engine/case.ts'
import { shippedDraft, demoIds, shippedSpec, shippedText, auditLines } from './demo.ts'

const readme = readFileSync(new URL('../../../specs/README.md', import.meta.url), 'utf8')

/** Colours that people with any colour vision tell apart (Okabe and Ito, Color Universal Design, 2008). */
const colours = ['#E69F00', '#56B4E9', '#009E73', '#F0E442', '#0072B2', '#D55E00', '#CC79A7']

const nanometresIn20mm = 20_000_000

describe('the demo engines', () => {
  const specs = demoIds.map(shippedSpec)

  it('are of every family, from one cylinder to eight, in line, in a V and flat', () => {
    expect(new Set(specs.map((spec) => spec.case.family))).toEqual(new Set(families))
    expect(new Set(specs.map((spec) => spec.case.cylinders))).toEqual(new Set([1, 2, 3, 4, 5, 6, 8]))
    expect(new Set(specs.map((spec) => spec.case.bankAngle))).toEqual(new Set([0, 60, 90, 180]))
  })

  it('use every plane, every kind of pass, every kind of step and every way to choose a shell', () => {
    const faces = specs.flatMap((spec) => spec.case.faces)
    expect(new Set(faces.map(({ plane }) => plane))).toEqual(
      new Set(['plan', 'plus-side', 'minus-side', 'nose', 'drive']),
    )
    expect(new Set(faces.map(({ shows }) => shows))).toEqual(
      new Set(['saddles', 'rods', 'balance', 'flange']),
    )
    const passes = specs.flatMap(({ procedures }) => procedures.flatMap(({ passes }) => passes))
    expect(new Set(passes.map(({ kind }) => kind))).toEqual(
      new Set([
        'seat',
        'torque',
        'angle',
        'loosen',
        'recheck',
        'length',
        'stretch',
        'tighten-to-stretch',
        'action',
      ]),
    )
    expect(passes.some((pass) => pass.kind === 'seat' && pass.gap)).toBe(true)
    expect(passes.some((pass) => pass.kind === 'action' && pass.reading)).toBe(true)
    expect(passes.some((pass) => pass.kind === 'action' && pass.waitMinutes)).toBe(true)
    expect(passes.some((pass) => pass.kind === 'torque' && pass.step?.of === 2)).toBe(true)
    expect(passes.some((pass) => pass.kind === 'loosen' && pass.reversed)).toBe(true)
    expect(passes.some((pass) => pass.kind === 'recheck' && pass.only && pass.repeat)).toBe(true)
    expect(passes.some((pass) => pass.kind === 'angle' && pass.others)).toBe(true)
    const fits = specs.flatMap((spec) => spec.fits)
    expect(fits.some(({ chart }) => chart === undefined)).toBe(true)
    expect(fits.some(({ grades }) => grades.every(({ wall }) => wall === undefined))).toBe(true)
    expect(fits.some(({ chart }) => chart?.some(({ upper, lower }) => upper !== lower))).toBe(true)
  })

  it('are listed in the README beside them', () => {
    const listed = [...readme.matchAll(/^\| `([a-z0-9-]+)` +\|/gm)].map(([, id]) => id)
    expect(new Set(listed)).toEqual(new Set(demoIds))
  })
})

describe.each(demoIds)('the demo engine %s', (id) => {
  const spec = shippedSpec(id)

  it('has no fault, and no doubt that its spec does not accept with a reason', () => {
    expect(auditLines(spec, ({ accepted }) => accepted === undefined)).toEqual([])
  })

  it('accepts only what the audit still doubts', () => {
    expect(acceptedDoubts(spec)).toHaveLength(spec.accepted?.length ?? 0)
  })

  it('says that it is invented, in its source and in its standing caution', () => {
    expect(spec.source.kind).toBe('demo')
    expect(shippedText(id)).toContain('nvented')
    expect(spec.cautions[0]?.text).toMatch(/never build a real engine/)
  })

  it('is named as its file is', () => {
    expect(spec.id).toBe(id)
  })

  it('has step names that fit into the strip of steps', () => {
    for (const { name } of spec.steps) expect(name.length, name).toBeLessThanOrEqual(16)
  })

  it('has grades that are told apart by colour as well as by pattern', () => {
    for (const { grades } of spec.fits) {
      expect(new Set(grades.map(({ colour }) => colour)).size).toBe(grades.length)
      expect(new Set(grades.map(({ pattern }) => pattern)).size).toBe(grades.length)
      for (const { colour } of grades) expect(colours).toContain(colour)
    }
  })

  it('leaves 20 mm between fasteners, so that a socket goes on and a number fits beside each', () => {
    for (const first of spec.fasteners)
      for (const second of spec.fasteners)
        if (first !== second && first.face === second.face)
          expect(
            Math.hypot(first.at[0] - second.at[0], first.at[1] - second.at[1]),
            `${first.number} and ${second.number} on ${first.face}`,
          ).toBeGreaterThanOrEqual(nanometresIn20mm)
  })

  it('leads through marks, shells and a tightening procedure for every face with fasteners', () => {
    const kinds = new Set(spec.steps.map(({ kind }) => kind))
    expect([...kinds]).toEqual(
      expect.arrayContaining([
        'note-marks',
        'choose-shells',
        'fit-shells',
        'fit-part',
        'run-procedure',
        'check',
      ]),
    )
    const faces = new Set(spec.procedures.map(({ face }) => face))
    for (const { face } of spec.fasteners) expect(faces).toContain(face)
  })

  it('does not name one colour for one grade in all engines: nothing is to be learned by heart from a demo', () => {
    for (const other of demoIds.filter((each) => each !== id)) {
      const theirs = shippedDraft(other).fits.map(({ grades }) =>
        grades.map(({ grade, colour }) => grade + colour),
      )
      for (const { grades } of spec.fits)
        expect(theirs).not.toContainEqual(grades.map(({ grade, colour }) => grade + colour))
    }
  })
})
