import { describe, expect, it } from 'vitest'
import { isPastProof } from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'

const last = (bench: Bench) =>
  isPastProof(bench.spec, bench.procedure, bench.run!, bench.run!.pulls.at(-1)!.number)

describe('a fastener is stretched past proof', () => {
  // M10 of class 10.9: 48.1 kN is its proof load (ISO 898-1 table 5); by F ≈ M/(K·d) with K 0.16 that is about 77 N·m.
  it.each([
    ['60', false],
    ['100', true],
  ])('by a torque of %s N·m: %s', (typed, stretched) => {
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, [typed, 'N·m']))
    expect(last(caps)).toBe(stretched)
  })

  it('by both parts of a turn together', () => {
    const rods = Bench.started('rods')
    rods.pullsToTarget()
    rods.pullsToTarget()
    rods.does(pull(rods.next!, ['50', '°']))
    expect(last(rods)).toBe(false)
    rods.does(pull(rods.next!, ['90', '°']))
    expect(last(rods)).toBe(true)
  })

  it('as far as anybody knows: not by a click without a reading, nor by what is seated, nor by a pull that is not there', () => {
    const caps = Bench.started('caps')
    caps.pullsNext()
    expect(last(caps)).toBeNull()
    caps.pullsNext(4)
    expect(last(caps)).toBeNull()
    expect(isPastProof(caps.spec, caps.procedure, caps.run!, 99)).toBeNull()
    expect(isPastProof(caps.spec, caps.procedure, caps.run!, null)).toBeNull()
  })
})
