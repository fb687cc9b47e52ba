import { describe, expect, it } from 'vitest'
import { classesWith, limitsOfClass, millimetres } from '../../../core/quantity/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'

describe('a size with its tolerance class', () => {
  it('is read as a drawing has it, in millimetres unless it says inches', () => {
    const limits = {
      name: '62 H6',
      nominal: millimetres(62),
      least: millimetres(62),
      most: millimetres(62.019),
    }
    expect(limitsOfClass('62 H6')).toEqual({ ok: true, value: limits })
    expect(limitsOfClass('62 mm H6')).toEqual({ ok: true, value: limits })
    expect(limitsOfClass('62H6')).toEqual({ ok: true, value: limits })
    expect(limitsOfClass('2 in h6')).toMatchObject({ ok: true, value: { most: millimetres(50.8) } })
    expect(limitsOfClass('47.5 js 6')).toMatchObject({ ok: true, value: { name: '47.5 js6' } })
  })

  it('tells holes from shafts by the size of the letter', () => {
    expect(limitsOfClass('40 h6')).toMatchObject({
      ok: true,
      value: { least: millimetres(39.984), most: millimetres(40) },
    })
  })

  it.each([
    ['62 Q6', 'tolerance-class-unknown'],
    ['62 H4', 'tolerance-class-unknown'],
    ['62 H12', 'tolerance-class-unknown'],
    ['62 K9', 'tolerance-class-unknown'],
    ['62 P5', 'tolerance-class-unknown'],
    ['62 mm', 'tolerance-class-unknown'],
    ['501 H6', 'tolerance-class-size'],
    ['0 H6', 'tolerance-class-size'],
    ['-5 H6', 'tolerance-class-size'],
    ['62 N·m H6', 'unit-unknown'],
  ])('%s is refused: %s', (typed, code) => {
    const limits = limitsOfClass(typed)
    expect(limits).toMatchObject({ ok: false, problem: { code } })
    expect(!limits.ok && sentenceOf(limits.problem).length).toBeGreaterThan(20)
  })

  it('is found from its limits, where they are those of a class', () => {
    const nominal = millimetres(40)
    const between = (least: number, most: number) =>
      classesWith(nominal, { least: millimetres(least), most: millimetres(most) })
    expect(between(40, 40.016)).toEqual(['H6'])
    expect(between(39.984, 40)).toEqual(['h6'])
    expect(between(39.992, 40.008)).toEqual(['JS6', 'js6'])
    expect(between(40, 40.018)).toEqual([])
    // k8 to k11 begin at the size itself, as H8 to H11 do.
    expect(between(40, 40.039)).toEqual(['H8', 'k8'])
  })
})
