import { describe, expect, it } from 'vitest'
import { againstLimits, againstServiceLimit, targetOf } from '../../../core/bearing/index.ts'
import { pumpMains, um } from './fits.ts'

const limits = { least: um(20), most: um(44) }
const of = (least: number, most: number) => ({ least: um(least), most: um(most) })

describe('a clearance against its limits of 20 to 44 µm', () => {
  it.each([
    [20, 44, 'inside'],
    [22, 40, 'inside'],
    [18, 36, 'may-be-tight'],
    [28, 46, 'may-be-loose'],
    [19, 45, 'may-be-either'],
    [5, 20, 'may-be-tight'],
    [44, 60, 'may-be-loose'],
    [5, 19, 'tight'],
    [45, 60, 'loose'],
  ] as const)('%d to %d µm is %s', (least, most, verdict) => {
    expect(againstLimits(of(least, most), limits)).toBe(verdict)
  })

  it('is judged to the nanometre', () => {
    expect(againstLimits({ least: um(19.999), most: um(44) }, limits)).toBe('may-be-tight')
    expect(againstLimits({ least: um(20), most: um(44.001) }, limits)).toBe('may-be-loose')
  })
})

describe('the target', () => {
  it('is the middle of the limits unless the spec says another', () => {
    expect(targetOf(pumpMains)).toBe(um(32))
    expect(targetOf({ ...pumpMains, clearance: { ...limits, target: um(30) } })).toBe(um(30))
  })
})

describe('a used bearing against the service limit', () => {
  const used = { ...pumpMains, clearance: { ...limits, serviceLimit: um(80) } }

  it.each([
    [60, 80, 'within-service'],
    [70, 81, 'may-be-beyond'],
    [80, 90, 'may-be-beyond'],
    [81, 90, 'beyond-service'],
  ] as const)('%d to %d µm is %s', (least, most, wear) => {
    expect(againstServiceLimit(of(least, most), used)).toBe(wear)
  })

  it('has no answer where the spec sets none', () => {
    expect(againstServiceLimit(of(60, 70), pumpMains)).toBeNull()
  })
})
