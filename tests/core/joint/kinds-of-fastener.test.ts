import { describe, expect, it } from 'vitest'
import {
  clampingTorque,
  formatThread,
  torqueAgainstProof,
  torqueEffect,
  torqueInputs,
  turnEffect,
  turnInputs,
} from '../../../core/joint/index.ts'
import { degrees, inMillimetres, millimetres, newtonMetres } from '../../../core/quantity/index.ts'
import { groupOf, jointOf } from './groups.ts'
import { inputText } from './input-text.ts'

// M10×1.5: nominal section 78.54, root section 52.29 mm²; 60 mm of grip.
describe('socket screws', () => {
  it('have a head that gives way less: 0.4 of a diameter instead of 0.5 (VDI 2230, 5.1.1)', () => {
    const less = jointOf().boltMmPerN - jointOf({ head: 'socket' }).boltMmPerN
    // 1 mm of 78.54 mm² of steel: 1 / (78.54 × 207 000).
    expect(less * 1e6).toBeCloseTo(0.0615, 3)
  })

  it('have the face of ISO 4762: 15.33 mm at least for M10, 12.33 for M8, 17.23 for M12 (from memory)', () => {
    const outer = (diameter: string, pitch: string) =>
      inMillimetres(
        jointOf({ thread: { diameter, pitch }, head: 'socket', headFace: undefined }).bearing.outer,
      )
    expect(Math.abs(outer('10 mm', '1.5 mm') - 15.33)).toBeLessThan(0.1)
    expect(Math.abs(outer('8 mm', '1.25 mm') - 12.33)).toBeLessThan(0.1)
    expect(Math.abs(outer('12 mm', '1.75 mm') - 17.23)).toBeLessThan(0.1)
  })
})

describe('a nut', () => {
  it('gives way by 0.4 of a diameter of steel, and the thread in the grip by what the nut leaves of it', () => {
    // Engaged are 8 mm and two pitches of 1.5 mm: 11 mm of 26, so that 15 mm are free and 45 mm are shank.
    // (5 + 45 + 4)/(78.54 × 207) + (15 + 5)/(52.29 × 207) = 3.3215 + 1.8478 nm/N.
    expect(jointOf({ into: 'nut' }).boltMmPerN * 1e6).toBeCloseTo(5.169, 2)
  })

  it('makes the parts give way less than one cone into a tapped hole does not: two cones meet half way', () => {
    expect(jointOf({ into: 'nut' }).clampedMmPerN).toBeGreaterThan(jointOf().clampedMmPerN)
  })
})

describe('a waisted shank', () => {
  it('stretches by its own section: 44 mm of 8 mm diameter', () => {
    // (5)/(78.54 × 207) + 44/(50.27 × 207) + (16 + 5)/(52.29 × 207) + 3.3/(78.54 × 71) = 0.3075 + 4.2284 + 1.9401 + 0.5918.
    expect(jointOf({ shank: '8 mm' }).boltMmPerN * 1e6).toBeCloseTo(7.068, 2)
  })
})

describe('layers of two materials', () => {
  it('give way one after the other, the one under the head the most', () => {
    const [soft, hard] = [
      { material: 'aluminium', thickness: '30 mm' },
      { material: 'steel', thickness: '30 mm' },
    ]
    const all = (material: string) => jointOf({ clamped: material }).clampedMmPerN
    const softFirst = jointOf({ layers: [soft, hard] }).clampedMmPerN
    const hardFirst = jointOf({ layers: [hard, soft] }).clampedMmPerN
    expect(softFirst).toBeGreaterThan(hardFirst)
    expect(softFirst).toBeLessThan(all('aluminium'))
    expect(hardFirst).toBeGreaterThan(all('steel'))
  })

  it('leave what the thread is in to `clamped`', () => {
    const layers = [{ material: 'steel', thickness: '60 mm' }]
    expect(jointOf({ layers, clamped: 'aluminium' }).boltMmPerN).toBe(jointOf().boltMmPerN)
    expect(jointOf({ layers, clamped: 'aluminium' }).clampedMmPerN).toBe(
      jointOf({ clamped: 'steel' }).clampedMmPerN,
    )
  })
})

describe('a friction class of VDI 2230 part 1, table A5', () => {
  it.each([
    ['A', 0.04, 0.1],
    ['B', 0.08, 0.16],
    ['C', 0.14, 0.24],
    ['D', 0.2, 0.35],
  ])('%s is %d to %d, and its middle', (frictionClass, least, most) => {
    const { friction } = jointOf({ frictionClass, threadState: 'dry' })
    expect([friction.least, friction.most]).toEqual([least, most])
    expect(friction.usual).toBeCloseTo((least + most) / 2, 12)
  })
})

describe('a prevailing torque', () => {
  const free = jointOf()
  const locked = jointOf({ prevailing: '10 N·m' })
  const fifty = { target: newtonMetres(50) }

  it('of up to 10 N·m leaves 40 to 50 of 50 N·m to clamp with, usually 45', () => {
    const turn = { target: degrees(30), least: degrees(25), most: degrees(35) }
    const clampedBy = (torque: number) => turnEffect(free, { target: newtonMetres(torque) }, turn).snug
    const clamps = { least: clampedBy(40).least, usual: clampedBy(45).usual, most: clampedBy(50).most }
    expect(turnEffect(locked, fifty, turn).snug).toEqual(clamps)
    const { least, usual } = torqueEffect(locked, fifty).preload
    expect([least, usual]).toEqual([clamps.least, clamps.usual])
  })

  it('is weighed against proof by what speaks for the verdict: only what is too much with all of it off is surely too much', () => {
    const weighed = torqueAgainstProof(locked, fifty)
    const by = (torque: number) => torqueAgainstProof(free, { target: newtonMetres(torque) })
    expect(weighed.preloadAtMostFriction).toBe(by(40).preloadAtMostFriction)
    expect(weighed.preloadAtUsualFriction).toBe(by(45).preloadAtUsualFriction)
    expect(weighed.preloadAtLeastFriction).toBe(by(50).preloadAtLeastFriction)
  })

  it('that goes on top of the torque leaves all of it to clamp with, and is told so', () => {
    const onTop = { prevailing: '10 N·m', torqueIncludesPrevailing: false }
    expect(torqueEffect(jointOf(onTop), fifty).preload.usual).toBe(torqueEffect(free, fifty).preload.usual)
    const prevailingText = (change: object) =>
      torqueInputs(groupOf(change), jointOf(change))
        .map(inputText)
        .find(({ name }) => name === 'Prevailing torque')?.value
    expect(prevailingText(onTop)).toBe(
      'up to 10 N·m, which is measured and set on top of the torque; the torque all clamps',
    )
    expect(prevailingText({ ...onTop, torqueIncludesPrevailing: true })).toBe(
      'none to 10 N·m, usually half of that, which goes off the torque before it clamps',
    )
    expect(prevailingText({ prevailing: '10 N·m' })).toContain(
      'the spec does not say so, and nothing is added',
    )
  })

  it('counts as lost, with what friction takes', () => {
    const { split, prevailing, lostShare } = torqueEffect(locked, fifty)
    expect(split.pitch + split.thread + split.head + prevailing).toBeCloseTo(50, 9)
    expect(lostShare).toBeCloseTo((50 - split.pitch) / 50, 9)
    expect(torqueEffect(free, fifty).prevailing).toBe(0)
  })

  it('above the torque leaves nothing to clamp with', () => {
    expect(clampingTorque(locked, newtonMetres(8), 'most')).toBe(0)
    expect(torqueEffect(locked, { target: newtonMetres(4) }).preload.usual).toBe(0)
  })
})

describe('what a calculation was made from', () => {
  const inputs = (change: object) => {
    const group = groupOf(change)
    const joint = jointOf(change)
    return [...torqueInputs(group, joint), ...turnInputs(group, joint)]
      .map(inputText)
      .map(({ name, value, source }) => `${name}: ${value} (${source})`)
  }

  it('says what a plain bolt was taken for', () => {
    const text = inputs({ headFace: undefined }).join('\n')
    expect(text).toContain('Thread: M10×1.5 (the spec; its other sizes by ISO 724)')
    expect(text).toContain('(the spec; ISO 898-1, table 3)')
    expect(text).toContain('from the width across flats')
    expect(text).toContain('a steel bolt of ISO 4014 over a grip of 60 mm, one diameter of it engaged')
    expect(text).toContain('a cone of 30° under the head')
    // (5 + 44)/(78.54 × 207) + (16 + 5)/(52.29 × 207) + 3.3/(78.54 × 71) = 3.014 + 1.940 + 0.592 nm/N.
    expect(text).toContain('How far the bolt stretches: 5.55 µm for each kN')
    expect(text).toContain('in aluminium of 71 GPa, into a tapped hole')
    expect(text).not.toContain('Prevailing')
  })

  it('says what else a spec has', () => {
    const text = inputs({
      thread: '3/8-16 UNC',
      propertyClass: 'SAE 8',
      head: 'socket',
      headFace: undefined,
      into: 'nut',
      shank: '8 mm',
      frictionClass: 'A',
      prevailing: '10 N·m',
      layers: [
        { material: 'steel', thickness: '20 mm' },
        { material: 'cast-iron', thickness: '40 mm' },
      ],
    }).join('\n')
    expect(text).toContain('Thread: 3/8-16 UNC (the spec; its other sizes by ASME B1.1)')
    expect(text).toContain('SAE 8: proof 827')
    expect(text).toContain('(the spec; SAE J429, table 1)')
    expect(text).toContain('from the diameter of a socket head, as ASME B18.3 has it')
    expect(text).toContain('class A of the spec')
    expect(text).toContain('Prevailing torque: none to 10 N·m')
    expect(text).toContain('of ISO 4762 over a grip of 60 mm, its shank of 8.0 mm, with a nut')
    expect(text).toContain('two cones of 30° under the head and the nut')
    expect(text).toContain('20.0 mm of steel of 207 GPa on 40.0 mm of cast-iron of 100 GPa')
  })

  it('names the standard of an inch socket screw', () => {
    const text = inputs({ thread: '3/8-16 UNC', propertyClass: 'A574', head: 'socket' }).join('\n')
    // 140 and 153 ksi of 6.894757 MPa each.
    expect(text).toContain(
      'A574: proof 965.3 MPa, yield 1054.9 MPa (the spec; ASTM A574, mechanical requirements)',
    )
  })

  it('names a metric thread and an inch thread that is in no series by their sizes', () => {
    expect(formatThread({ system: 'metric', diameter: millimetres(10), pitch: millimetres(1) })).toBe('M10×1')
    expect(formatThread({ system: 'unified', diameter: millimetres(10), pitch: millimetres(1) })).toBe(
      'M10×1',
    )
  })
})
