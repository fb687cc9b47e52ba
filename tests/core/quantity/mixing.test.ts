import { describe, expect, it } from 'vitest'
import {
  amountsIn,
  celsius,
  degrees,
  millimetres,
  newtonMetres,
  newtons,
  sum,
  torqueIn,
  type Angle,
  type Force,
  type Length,
  type Temperature,
  type Torque,
} from '../../../core/quantity/index.ts'
import { en } from '../../../core/words/index.ts'

const shown = amountsIn(en)

// The compiler is the test here: each marked line is an error in the type check, and the mark is one when the line is not.
describe('kinds of quantity', () => {
  const length = millimetres(1)
  const torque = newtonMetres(1)
  const angle = degrees(1)
  const force = newtons(1)
  const temperature = celsius(1)

  it('do not take the place of one another', () => {
    // @ts-expect-error a torque is not a length
    const a: Length = torque
    // @ts-expect-error an angle is not a torque
    const b: Torque = angle
    // @ts-expect-error a torque is not an angle
    const c: Angle = torque
    // @ts-expect-error a temperature is not a force
    const d: Force = temperature
    // @ts-expect-error a length is not a temperature
    const e: Temperature = length
    // @ts-expect-error a bare number says nothing of its unit
    const f: Torque = 24
    // @ts-expect-error a force is not an angle
    const g: Angle = force
    expect([a, b, c, d, e, f, g]).toHaveLength(7)
  })

  it('are refused by the functions of another kind', () => {
    // @ts-expect-error a torque cannot be added to a length
    sum(length, torque)
    // @ts-expect-error a bare number cannot be added to a length
    sum(length, 1000)
    // @ts-expect-error an angle is not shown as a torque
    shown.torque(angle, 'N·m')
    // @ts-expect-error a torque is not shown as an angle
    shown.angle(torque)
    // @ts-expect-error a torque has no millimetres
    torqueIn(torque, 'mm')
    // @ts-expect-error a torque is never equal to an angle
    expect(torque === angle).toBe(true)
  })

  it('are plain numbers all the same', () => {
    const number: number = torque
    expect(JSON.stringify({ number, length })).toBe('{"number":1,"length":1000000}')
  })
})
