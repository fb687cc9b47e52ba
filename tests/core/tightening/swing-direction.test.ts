import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { degrees } from '../../../core/quantity/index.ts'
import { protractor, turnedOn } from '../../../core/tightening/index.ts'
import { checkProperty } from '../../property.ts'

function window(target: number, by = 5) {
  const limits = { target: degrees(target), least: degrees(target - by), most: degrees(target + by) }
  return { kind: 'angle', ...limits, tolerance: 'spec' } as const
}

describe('a protractor', () => {
  it('starts where the handle is: from a quarter past, 120° ± 5° ends at 210°', () => {
    expect(protractor(degrees(90), window(120), 'clockwise')).toEqual({
      start: 90,
      end: 210,
      least: 205,
      most: 215,
      fullTurns: 0,
      flats: [150, 210],
    })
  })

  it('goes on past straight up: from 300°, 90° ends at 30°', () => {
    const drawn = protractor(degrees(300), window(90), 'clockwise')
    expect(drawn).toMatchObject({ end: 30, least: 25, most: 35, flats: [0] })
  })

  it('goes the other way round where the drawing is seen from behind the heads', () => {
    const drawn = protractor(degrees(30), window(90), 'anticlockwise')
    expect(drawn).toMatchObject({ end: 300, least: 305, most: 295, flats: [330] })
  })

  it('says how many full turns come before the end: 450° is one and a quarter', () => {
    expect(protractor(degrees(0), window(450), 'clockwise')).toMatchObject({ fullTurns: 1, end: 90 })
  })

  it('has one full turn before an end of 370°', () => {
    expect(protractor(degrees(0), window(370), 'clockwise')).toMatchObject({ fullTurns: 1, end: 10 })
  })

  it('takes a start of any number of degrees', () => {
    expect(protractor(degrees(-90), window(90), 'clockwise')).toMatchObject({ start: 270, end: 0 })
    expect(protractor(degrees(725), window(60), 'clockwise')).toMatchObject({ start: 5, end: 65 })
  })
})

describe('a handle that is followed', () => {
  it('adds up over straight up', () => {
    expect(turnedOn(degrees(40), degrees(350), degrees(20), 'clockwise')).toBe(70)
  })

  it('takes a step back off again', () => {
    expect(turnedOn(degrees(40), degrees(20), degrees(350), 'clockwise')).toBe(10)
  })

  it('counts half a turn at once as tightening', () => {
    expect(turnedOn(degrees(0), degrees(10), degrees(190), 'clockwise')).toBe(180)
    expect(turnedOn(degrees(0), degrees(190), degrees(10), 'anticlockwise')).toBe(180)
  })

  it('takes more than half a turn at once for a step back: 185° on are 175° back', () => {
    expect(turnedOn(degrees(200), degrees(0), degrees(185), 'clockwise')).toBe(25)
  })

  it('counts the other way round', () => {
    expect(turnedOn(degrees(0), degrees(20), degrees(350), 'anticlockwise')).toBe(30)
  })

  it('arrives at the end that the protractor shows, however small the steps', () => {
    const steps = fc.array(fc.integer({ min: 1, max: 179 }), { minLength: 1, maxLength: 20 })
    const senses = fc.constantFrom('clockwise', 'anticlockwise')
    checkProperty(
      fc.property(fc.integer({ min: 0, max: 359 }), steps, senses, (start, turns, sense) => {
        let turned = degrees(0)
        let at = degrees(start)
        for (const turn of turns) {
          const { end } = protractor(at, window(turn, 0), sense)
          turned = turnedOn(turned, at, end, sense)
          at = end
        }
        expect(turned).toBe(turns.reduce((a, b) => a + b))
      }),
    )
  })
})
