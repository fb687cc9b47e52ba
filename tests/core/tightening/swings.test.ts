import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { degrees } from '../../../core/quantity/index.ts'
import { inFlats, swings, type Grip } from '../../../core/tightening/index.ts'
import { en } from '../../../core/words/index.ts'
import { checkProperty } from '../../property.ts'
import { lineOf } from '../../problem-line.ts'

function split(total: number, room: number, grip: Grip): readonly number[] | string {
  const found = swings(degrees(total), degrees(room), grip)
  return found.ok ? found.value.map(({ by }) => by) : lineOf(found.problem)
}

describe('swings of a handle', () => {
  it('is one where there is room for all of it', () => {
    expect(split(90, 90, 'hexagon')).toEqual([90])
    expect(split(50, 300, 'ratchet')).toEqual([50])
  })

  it('goes on by whole flats with a hexagon end: 90° with 70° of room is one flat and a half', () => {
    expect(split(90, 70, 'hexagon')).toEqual([60, 30])
  })

  it('takes two flats at a time where there is room for them', () => {
    expect(split(270, 130, 'hexagon')).toEqual([120, 120, 30])
  })

  it('goes on by half flats with a bi-hexagon: 90° with 45° of room is three times 30°', () => {
    expect(split(90, 45, 'bi-hexagon')).toEqual([30, 30, 30])
  })

  it('leaves a last swing as long as the room, rather than one flat more: 150° with 100° of room', () => {
    expect(split(150, 100, 'hexagon')).toEqual([60, 90])
  })

  it('uses all the room with a ratchet', () => {
    expect(split(90, 40, 'ratchet')).toEqual([40, 40, 10])
    expect(split(3, 1, 'ratchet')).toEqual([1, 1, 1])
  })

  it('counts up what has been turned', () => {
    const found = swings(degrees(120), degrees(50), 'bi-hexagon')
    expect(found.ok && found.value.map(({ turned }) => turned)).toEqual([30, 60, 90, 120])
  })

  it('adds up to the whole turn and never needs more than the room', () => {
    const grips = fc.constantFrom<Grip>('hexagon', 'bi-hexagon', 'ratchet')
    checkProperty(
      fc.property(
        fc.integer({ min: 1, max: 720 }),
        fc.integer({ min: 60, max: 360 }),
        grips,
        (total, room, grip) => {
          const found = split(total, room, grip)
          if (typeof found === 'string') throw new Error(found)
          expect(found.reduce((a, b) => a + b)).toBe(total)
          for (const by of found) {
            expect(by).toBeGreaterThan(0)
            expect(by).toBeLessThanOrEqual(room)
          }
        },
      ),
    )
  })

  it('refuses a hexagon end that cannot reach the next flat, and says what can', () => {
    expect(split(90, 45, 'hexagon')).toBe('room-too-small: room=45 °, flat=60 °, grip=hexagon')
  })

  it('needs no second flat for a turn that fits into the room', () => {
    expect(split(40, 45, 'hexagon')).toEqual([40])
    expect(split(45, 45, 'hexagon')).toEqual([45])
  })

  it('refuses an angle of 4,000°', () => {
    expect(split(4000, 60, 'hexagon')).toBe('turn-out-of-range: typed=4000 °, most=720 °')
  })

  it('takes two full turns and no more', () => {
    expect(split(720, 360, 'hexagon')).toEqual([360, 360])
    expect(split(720.5, 360, 'hexagon')).toContain('turn-out-of-range: typed=720.5 °, most=720 °')
  })

  it('refuses no turn and no room', () => {
    expect(split(0, 60, 'hexagon')).toContain('turn-missing')
    expect(split(90, 0, 'ratchet')).toContain('no-room')
  })
})

describe('a turn in flats of a hexagon', () => {
  it.each([
    [0, '0 flats'],
    [30, '1/2 of a flat'],
    [60, '1 flat'],
    [75, '1 flat and 1/4'],
    [90, '1 flat and 1/2'],
    [100, '1 flat and 2/3'],
    [120, '2 flats'],
    [180, '3 flats'],
    [95, '1 flat and 7/12'],
    [94, '1.6 flats'],
    [52.5, '0.9 flats'],
    [10, '1/6 of a flat'],
    [50, '5/6 of a flat'],
  ])('%d° is %s', (angle, turn) => {
    expect(en.run.angle.flats(inFlats(degrees(angle)))).toBe(turn)
  })
})
