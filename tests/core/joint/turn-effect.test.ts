import { describe, expect, it } from 'vitest'
import { turnEffect, turnInputs, turnPlot, type TurnWindow } from '../../../core/joint/index.ts'
import { degrees, newtonMetres } from '../../../core/quantity/index.ts'
import { groupOf, jointOf } from './groups.ts'
import { inputText } from './input-text.ts'

const turn = (target: number, by = 5): TurnWindow => ({
  target: degrees(target),
  least: degrees(target - by),
  most: degrees(target + by),
})
const snugTorque = { target: newtonMetres(16) }

describe('what a turn after a torque does', () => {
  const joint = jointOf()
  const effect = turnEffect(joint, snugTorque, turn(25))

  it('begins at what the torque left: a third of 48 N·m is a third of 29.6 kN', () => {
    expect(Math.abs(effect.snug.usual / (29_600 / 3) - 1)).toBeLessThan(0.012)
  })

  it('adds the same for each degree: 1.5 mm a turn, over bolt and parts together', () => {
    const stretchPerDegree = 1.5 / 360
    expect(effect.perDegree * (joint.boltMmPerN + joint.clampedMmPerN)).toBeCloseTo(stretchPerDegree, 12)
    expect(effect.turned.state).toBe('elastic')
    expect(effect.turned.preload).toBeCloseTo(effect.snug.usual + 25 * effect.perDegree, 6)
  })

  it('scatters less than a torque that would come to the same: the turn adds no scatter of its own but its limits', () => {
    const share = (effect.preload.most! - effect.preload.least) / 2 / effect.preload.usual
    expect(share).toBeGreaterThan(0.05)
    expect(share).toBeLessThan(0.25)
  })

  it('comes to the yield point and holds that, however far it goes on', () => {
    const far = turnEffect(joint, snugTorque, turn(180))
    expect(far.turned).toEqual({ state: 'yielding', preload: far.yieldLoad })
    expect(far.preload.usual).toBe(far.yieldLoad)
    // More friction, more twist: it begins to yield at less.
    expect(far.preload.least).toBeLessThan(far.yieldLoad)
    expect(far.preload.most).toBeNull()
    expect(far.ofProof.most).toBeNull()
    expect(effect.snug.usual + far.toYield * effect.perDegree).toBeCloseTo(far.yieldLoad, 6)
  })

  it('never meets the proof load of an 8.8, which yields before, twisted as it is; a 10.9 with little friction does', () => {
    expect(effect.yieldLoad).toBeLessThan(effect.proofLoad)
    expect(effect.toProof).toBeNull()
    // 10.9, M10, µ 0.12: proof 48.1, yield 43.4/0.9 = 48.2 kN.
    const harder = turnEffect(jointOf({ propertyClass: '10.9' }), snugTorque, turn(25))
    expect(harder.toProof).toBeLessThan(harder.toYield)
  })

  it('has no way left where the torque alone goes past yield', () => {
    expect(turnEffect(joint, { target: newtonMetres(80) }, turn(25)).toYield).toBe(0)
  })

  it('adds less to a long soft joint than to a short stiff one', () => {
    const long = turnEffect(jointOf({ grip: '120 mm' }), snugTorque, turn(25))
    expect(long.perDegree).toBeLessThan(effect.perDegree)
  })

  it('names the springs it is made from', () => {
    const named = turnInputs(groupOf(), joint)
      .map(inputText)
      .map(({ name, value }) => `${name}: ${value}`)
    expect(named).toHaveLength(3)
    expect(named[0]).toMatch(/^How far the bolt stretches: \d\.\d\d µm for each kN$/)
  })
})

describe('the plot of preload against turn', () => {
  const joint = jointOf()
  const plot = turnPlot(joint, snugTorque, turn(90))

  it('rises in a straight line from snug, and is level from where the bolt yields', () => {
    const [snug, bend, end] = plot.lines.usual
    expect(plot.lines.usual).toHaveLength(3)
    expect(snug).toEqual(plot.snug)
    expect(bend!.turn).toBeCloseTo(plot.yielding!.turn, 9)
    expect(bend!.preload).toBe(plot.yieldLoad)
    expect(end).toEqual({ turn: plot.upTo, preload: plot.yieldLoad })
  })

  it('has a line for the least and the most that the torque leaves, as steep as the usual one', () => {
    const slopes = [plot.lines.least, plot.lines.usual, plot.lines.most].map(
      ([from, to]) => (to!.preload - from!.preload) / to!.turn,
    )
    expect(slopes[0]).toBeCloseTo(slopes[1]!, 6)
    expect(slopes[2]).toBeCloseTo(slopes[1]!, 6)
    expect(plot.lines.least[0]!.preload).toBeLessThan(plot.lines.most[0]!.preload)
  })

  it('shows the turns that the spec asks for, and some more', () => {
    expect(plot.window).toEqual(turn(90))
    expect(plot.upTo).toBeGreaterThan(95)
    expect(plot.most).toBeGreaterThan(plot.yieldLoad)
  })

  it('has two points where the bolt stays elastic to its end, and no yield point in sight', () => {
    const short = turnPlot(joint, snugTorque, turn(20))
    expect(short.lines.usual).toHaveLength(2)
    const [from, to] = short.lines.usual
    const { perDegree } = turnEffect(joint, snugTorque, turn(20))
    expect(to!.preload - from!.preload).toBeCloseTo(perDegree * to!.turn, 6)
    // A fifth of room beyond the last limit, 25°.
    expect(to!.turn).toBeCloseTo(30, 9)
    expect(short.most).toBeCloseTo(1.2 * short.yieldLoad, 6)
    expect(short.yielding).toBeNull()
  })

  it('is level all along where the torque alone makes the bolt yield', () => {
    const { lines, yieldLoad, snug } = turnPlot(joint, { target: newtonMetres(80) }, turn(40))
    expect(snug.preload).toBe(yieldLoad)
    expect(lines.usual.every(({ preload }) => preload === yieldLoad)).toBe(true)
  })
})
