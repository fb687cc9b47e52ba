import { describe, expect, it } from 'vitest'
import { auditAfter, named, nth, type Draft } from '../../engine/demo.ts'

/** The sump screws of the three are M6×1, class 8.8: proof load 11.6 kN, ISO 898-1 table 5. */
function sumpTorque(target: string, more: object = {}) {
  return auditAfter('skerry-3', (spec) => {
    const sump = named(spec.procedures, 'sump')
    sump.passes = sump.passes.filter(({ kind }) => kind !== 'recheck')
    sump.orders.pop()
    const pass = nth(sump.passes, 2)
    for (const limit of ['least', 'most']) Reflect.deleteProperty(pass, limit)
    Object.assign(pass, { target, ...more })
  })
}

describe('a torque against the proof load', () => {
  it('is refused when the thread would be past proof even at high friction', () => {
    // 9 N·m ×3: at a friction of 0.24 about 14.7 kN, by F ≈ M/(0.30·d).
    expect(sumpTorque('27 N·m')).toEqual([
      expect.stringMatching(
        /^fault torque-overload procedures\[3\]\.passes\[2\]\.target: procedure=Sump screws, pass=3, group=Sump screws, thread=M6×1, propertyClass=8\.8, preload=1[3-6]\.\d kN, proof=11\.7 kN, .*torque=27 N·m$/,
      ),
    ])
  })

  it('says what it would be in inch-pounds, where foot-pounds were read for them', () => {
    // 80 lbf·in is 9.04 N·m; 80 lbf·ft is 108.5 N·m.
    expect(sumpTorque('80 lbf·ft')).toEqual([
      expect.stringMatching(
        /^fault torque-overload .* written=80 lbf·ft, meant=80 lbf·in, inNewtonMetres=9 N·m, torque=108\.5 N·m$/,
      ),
    ])
  })

  it('says so too where N·m were written for inch-pounds', () => {
    expect(sumpTorque('80 N·m')).toEqual([
      expect.stringMatching(
        /^fault torque-overload .* written=80 N·m, meant=80 lbf·in, inNewtonMetres=9 N·m, torque=80 N·m$/,
      ),
    ])
  })

  it('is doubted when it is past proof at usual friction only', () => {
    // Nearly twice the 9 N·m that dry threads usually get; an 8.8 yields, twisted as it is, at 9 to 10 kN by friction.
    expect(sumpTorque('16 N·m')).toEqual([
      expect.stringMatching(
        /^doubt torque-likely-overload .* preload=1[01]\.\d kN, proof=\d+\.\d kN, torque=16 N·m$/,
      ),
    ])
  })

  it('is not doubted at the value of the VDI 2230 table', () => {
    expect(sumpTorque('10.1 N·m')).toEqual([])
  })

  it('is weighed by its own value where some fasteners of a pass have one', () => {
    const own = { others: [{ fasteners: ['sump-2'], target: '90 N·m', least: '80 N·m', most: '95 N·m' }] }
    expect(sumpTorque('9 N·m', own)).toEqual([
      expect.stringMatching(
        /^fault torque-overload procedures\[3\]\.passes\[2\]\.others\[0\]\.target: .*torque=90 N·m$/,
      ),
    ])
    expect(sumpTorque('90 N·m', { others: [{ fasteners: ['sump-2'], target: '9 N·m' }] })).toEqual([
      expect.stringMatching(/^fault torque-overload procedures\[3\]\.passes\[2\]\.target: .*torque=90 N·m$/),
    ])
  })

  it('is reported with the preload of the torque that it names: of the upper limit, where the target would do', () => {
    const preloadOf = (lines: readonly string[]) => /^fault .* preload=([\d.]+) kN/.exec(lines[0] ?? '')?.[1]
    const byTarget = preloadOf(sumpTorque('90 N·m'))
    expect(byTarget).toBeDefined()
    expect(preloadOf(sumpTorque('9 N·m', { least: '8 N·m', most: '90 N·m' }))).toBe(byTarget)
    expect(preloadOf(sumpTorque('90 N·m', { least: '85 N·m', most: '120 N·m' }))).toBe(byTarget)
  })

  it('is refused when even the most that is allowed would be past proof', () => {
    expect(sumpTorque('9 N·m', { least: '8 N·m', most: '90 N·m' })).toEqual([
      expect.stringMatching(/^fault torque-overload .*torque=90 N·m$/),
    ])
  })
})

describe('a torque that clamps next to nothing', () => {
  it('is refused where foot-pounds explain it', () => {
    // 7 lbf·ft is 9.5 N·m; 7 lbf·in is 0.8 N·m.
    expect(sumpTorque('7 lbf·in').filter((line) => line.includes('torque-clamps-nothing'))).toEqual([
      expect.stringMatching(
        /^fault torque-clamps-nothing .* thread=M6×1, propertyClass=8\.8, preload=0\.7 kN, proof=11\.7 kN, torque=0\.8 N·m, written=7 lbf·in, meant=7 lbf·ft, inNewtonMetres=9\.5 N·m$/,
      ),
    ])
  })

  it('is only doubted where nothing explains it', () => {
    expect(sumpTorque('0.1 N·m').filter((line) => line.includes('torque-clamps-nothing'))).toEqual([
      expect.stringMatching(/^doubt torque-clamps-nothing .* torque=0\.1 N·m$/),
    ])
  })

  it('is right before a turn: 5 N·m that only bring the rod cap home', () => {
    expect(
      auditAfter('skerry-3', (spec) => {
        Object.assign(nth(named(spec.procedures, 'rods').passes, 1), {
          target: '2 N·m',
          least: '1 N·m',
          most: '3 N·m',
        })
      }),
    ).toEqual([])
  })
})

describe('a turn', () => {
  const turned = (target: string) =>
    auditAfter('skerry-3', (spec) => {
      const pass = nth(named(spec.procedures, 'rods').passes, 2)
      for (const limit of ['least', 'most']) Reflect.deleteProperty(pass, limit)
      Object.assign(pass, { target })
    })

  it('that goes a little past yield is nobody’s business: bolts are made for it', () => {
    expect(turned('90 °')).toEqual([])
  })

  it('that leaves the elastic line by much is doubted', () => {
    // M8×1, class 12.9, 40 mm grip, yields while turned at 37 to 39 kN; half a turn stretches it half a millimetre.
    expect(turned('180 °')).toEqual([
      expect.stringMatching(
        /^doubt turn-leaves-elastic-line procedures\[0\]\.passes\[2\]\.target: procedure=Rod bolts, pass=3, angle=180 °, group=Rod bolts, preload=\d\d\.\d kN, proof=38 kN, yieldLoad=3[789]\.\d kN$/,
      ),
    ])
  })
})

describe('the load that a turn is calculated to', () => {
  // M8×1, 12.9, thread all along a grip of 40 mm, into steel of 207 000 MPa; d3 6.7731 mm, section there 36.03 mm², of 8 mm 50.27 mm².
  // Bolt (VDI 2230 5.1.1): (4/50.27 + 40/36.03 + 4/36.03 + 0.33·8/50.27)/E = 6.538e-6 mm/N. Parts, a cone from 9.9 mm with a
  // hole of 8.8 mm (Shigley 8-5): ln[(56.09 − 8.8)(9.9 + 8.8)/((56.09 + 8.8)(9.9 − 8.8))]/(π·E·8.8·tan 30°) = 0.762e-6 mm/N.
  // Half a turn of 1 mm from no load: 0.5/7.300e-6 = 68.5 kN.
  const preloadAt = (target: string) => {
    const line = auditAfter('skerry-3', (spec) => {
      const rods = named(spec.procedures, 'rods')
      rods.passes = [{ kind: 'angle', order: nth(rods.orders, 0).id, target }]
    }).find((each) => each.includes('turn-leaves-elastic-line'))
    const found = /preload=([\d.]+) kN, .*yieldLoad=([\d.]+) kN/.exec(line ?? '')
    return found === null ? null : { preload: Number(found[1]), yieldLoad: Number(found[2]) }
  }

  it('is the turn’s share of the pitch over how far bolt and parts give way together', () => {
    expect(preloadAt('180 °')!.preload).toBeCloseTo(68.5, 0)
  })

  it('is doubted from one and a half times the yield load on, and not before', () => {
    const degrees = Array.from({ length: 120 }, (_, step) => 90 + step)
    const first = degrees.map((each) => preloadAt(`${each} °`)).find((each) => each !== null)!
    const share = first.preload / first.yieldLoad
    expect(share).toBeGreaterThan(1.49)
    // One degree more or less is 0.4 kN of some 57.
    expect(share).toBeLessThan(1.52)
  })
})

describe('a turn of some fasteners only', () => {
  it('is found for each by its own value, where the group’s first is turned as it should be', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      const pass = nth(named(spec.procedures, 'rods').passes, 2)
      Object.assign(pass, { others: [{ fasteners: ['rod-5'], target: '180 °' }] })
    })
    expect(lines).toEqual([
      expect.stringMatching(
        /^doubt turn-leaves-elastic-line procedures\[0\]\.passes\[2\]\.others\[0\]\.target: procedure=Rod bolts, pass=3, angle=180 °, /,
      ),
    ])
  })
})

it('of two turns for one fastener the first is calculated with', () => {
  const found = (first: string, second: string) =>
    auditAfter('skerry-3', (spec) => {
      const own = (target: string) => ({ fasteners: ['rod-5'], target })
      Object.assign(nth(named(spec.procedures, 'rods').passes, 2), { others: [own(first), own(second)] })
    }).filter((line) => line.includes('turn-leaves-elastic-line'))
  expect([found('180 °', '60 °').length, found('60 °', '180 °').length]).toEqual([1, 0])
})

describe('values beside one another', () => {
  it('are doubted when a small thread gets what the large one gets', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      const flange = named(spec.procedures, 'flange')
      const both = flange.orders.flatMap(({ sequence }) => sequence)
      flange.orders = [{ id: 'both', sequence: both }]
      flange.passes = [{ kind: 'torque', order: 'both', target: '9 N·m' }]
    })
    expect(lines).toEqual([
      'doubt same-torque-for-small procedures[2].passes[0].target: procedure=Flange bolts, pass=1, torque=9 N·m, small=End screws, large=Flange bolts',
    ])
  })

  it('are doubted when the limits are finer than any wrench', () => {
    expect(sumpTorque('9 N·m', { least: '8.97 N·m', most: '9.03 N·m' })).toEqual([
      'doubt tolerance-too-fine procedures[3].passes[2].target: procedure=Sump screws, pass=3, torque=9 N·m, spread=0.03 N·m',
    ])
  })

  it('are doubted when hardly any wrench reads them', () => {
    expect(sumpTorque('0.9 N·m')).toContainEqual(
      'doubt no-usual-wrench procedures[3].passes[2].target: procedure=Sump screws, pass=3, torque=0.9 N·m',
    )
  })

  it('may be limits to one side: 90 to 94 N·m', () => {
    expect(sumpTorque('9 N·m', { least: '9 N·m', most: '9.4 N·m' })).toEqual([])
  })
})

describe('a prevailing torque', () => {
  const findingsAfter = (change: (group: Draft['fastenerGroups'][number]) => void) =>
    auditAfter('skerry-3', (spec) => change(named(spec.fastenerGroups, 'case-bolts')))

  it('of which it is not said whether the torque includes it is a doubt', () => {
    expect(findingsAfter((bolts) => (bolts.prevailing = '6 N·m'))).toEqual([
      expect.stringMatching(/^doubt prevailing-not-said fastenerGroups\[0\]\.prevailing: .*torque=6 N·m$/),
    ])
    for (const torqueIncludesPrevailing of [true, false])
      expect(
        findingsAfter((bolts) => Object.assign(bolts, { prevailing: '6 N·m', torqueIncludesPrevailing })),
      ).toEqual([])
  })

  it('that is not there, of which it is said whether the torque includes it, is a fault', () => {
    expect(findingsAfter((bolts) => (bolts.torqueIncludesPrevailing = true))).toEqual([
      expect.stringContaining('fault prevailing-missing fastenerGroups[0].torqueIncludesPrevailing'),
    ])
  })
})
