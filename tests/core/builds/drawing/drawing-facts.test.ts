import { describe, expect, it } from 'vitest'
import { drawingFacts, faceOfStep } from '../../../../core/builds/index.ts'
import { sumpByStretch } from '../sump-by-stretch.ts'
import { demoEngine, Workshop } from '../workshop.ts'
import { en } from '../../../../core/words/index.ts'

const skerry = demoEngine('skerry-3')
const facts = (shop: Workshop, step: string, unit?: 'lbf·ft') =>
  drawingFacts(en, shop.spec, shop.state, shop.step(step), unit)

describe('the face that a step is drawn on', () => {
  it.each([
    ['case-marks', 'joint'],
    ['choose-mains', 'joint'],
    ['pin-marks', 'rods'],
    ['fit-rod-shells', 'rods'],
    ['rods-on', 'rods'],
    ['bead-plus', 'joint'],
    ['sump-run', 'sump'],
    ['sump-on', 'sump'],
    ['rods-free', 'rods'],
    ['last-look', 'joint'],
  ])('of %s is %s', (step, face) => {
    expect(faceOfStep(skerry, new Workshop(skerry).step(step))).toBe(face)
  })
})

describe('the bearings on the drawing', () => {
  const shop = new Workshop(skerry)

  it('are unknown before shells are chosen, and nothing says that they are out of limits', () => {
    expect(facts(shop, 'case-marks').bearings['M2']).toEqual({
      upper: null,
      lower: null,
      clearance: null,
      withinLimits: true,
    })
  })

  it('show grade, colour, pattern and clearance once chosen, and which halves are in', () => {
    shop.worksUpTo('fit-mains')
    shop.does({ type: 'fit-half', step: 'fit-mains', position: 'M2', half: 'upper' })
    const grade = skerry.fits[0]!.grades.find(({ grade }) => grade === 'T')!
    const half = { grade: 'T', colour: grade.colour, pattern: grade.pattern }
    expect(facts(shop, 'fit-mains').bearings['M2']).toEqual({
      upper: { ...half, fitted: true },
      lower: { ...half, fitted: false },
      clearance: '35 µm',
      withinLimits: true,
    })
  })

  it('say when a clearance leaves its limits: marks 3 and H ask for V, and R is 12 µm thinner in each half', () => {
    const shop = new Workshop(skerry)
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '3 3 3 3' })
    shop.does({ type: 'note-marks', step: 'crank-marks', typed: 'HHHH' })
    const others = (['upper', 'lower'] as const).map((half) => ({
      position: 'M1',
      half,
      grade: 'R',
      reason: 'Nothing else there.',
    }))
    shop.does({ type: 'choose-shells', step: 'choose-mains', others })
    expect(facts(shop, 'fit-mains').bearings['M1']).toMatchObject({ clearance: '59 µm', withinLimits: false })
    expect(facts(shop, 'fit-mains').bearings['M2']).toMatchObject({ clearance: '35 µm', withinLimits: true })
  })
})

describe('the fasteners on the drawing', () => {
  it('are not spoken of before their run has begun', () => {
    const shop = new Workshop(skerry)
    expect(facts(shop, 'close-case')).toMatchObject({ fasteners: {}, path: null, callout: null })
  })

  it('all wait until the run is started', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('case-run')
    const { fasteners, callout } = facts(shop, 'case-run')
    expect(fasteners['case-1']).toEqual({ number: '1', state: 'waiting', share: 0 })
    expect(callout).toBeNull()
  })

  it('show the next one, its value in the unit of the wrench, and the way to it from the last', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('case-run')
    for (let entry = 0; entry < 2 + 8 + 5; entry++) shop.goesOn()
    const { fasteners, path, callout, face } = facts(shop, 'case-run')
    expect(face).toBe('joint')
    expect(fasteners['case-5']).toEqual({ number: '5', state: 'partly-done', share: 0.5 })
    expect(fasteners['case-6']).toEqual({ number: '6', state: 'next', share: 0.25 })
    expect(fasteners['case-7']?.state).toBe('after-next')
    expect(path).toEqual({ from: 'case-5', to: 'case-6' })
    expect(callout).toBe('15 N·m')
    // 15 N·m is 11.06 lbf·ft (NIST SP 811).
    expect(facts(shop, 'case-run', 'lbf·ft').callout).toBe('11.1 lbf·ft')
  })

  it('are called out by hand, by angle, or not at all, as the pass asks', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('case-run')
    for (let entry = 0; entry < 2; entry++) shop.goesOn()
    expect(facts(shop, 'case-run').callout).toBe('by hand')
    for (let entry = 0; entry < 3 * 8; entry++) shop.goesOn()
    // The crank is turned between two passes: nobody is next.
    expect(facts(shop, 'case-run')).toMatchObject({ callout: null, path: null })
    shop.goesOn()
    expect(facts(shop, 'case-run')).toMatchObject({ callout: '60°', path: null })
  })

  it('with nuts whose torque goes on top are called out to be run down, then by what the wrench is pulled to', () => {
    const shop = new Workshop(demoEngine('moor-flat-4'))
    shop.worksUpTo('case-run')
    shop.goesOn()
    expect(facts(shop, 'case-run').callout).toBe('run it down')
    // Six nuts run down at 3 N·m each, and the gap.
    for (let entry = 0; entry < 7; entry++) shop.goesOn()
    expect(facts(shop, 'case-run').callout).toBe('28 N·m')
  })

  it('are called out to be tightened where that is done until they are long enough, and to be measured before', () => {
    const shop = new Workshop(sumpByStretch())
    shop.worksUpTo('sump-run')
    const callouts: (string | null)[] = []
    while (callouts.at(-1) !== 'tighten' && callouts.length < 100) {
      shop.goesOn()
      callouts.push(facts(shop, 'sump-run').callout)
    }
    expect([...new Set(callouts)]).toEqual(['measure', '3 N·m', 'tighten'])
  })

  it('stay as they are while another run on the same face is under way', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('flange-run')
    const { fasteners } = facts(shop, 'flange-run')
    expect(fasteners['case-1']).toEqual({ number: '1', state: 'done', share: 1 })
    expect(fasteners['flange-9']?.state).toBe('waiting')
    expect(facts(shop, 'sump-run').fasteners['case-1']).toBeUndefined()
  })
})

describe('the beads on the drawing', () => {
  it('are the one that the step lays and those that are laid', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('bead-plus')
    expect(facts(shop, 'bead-plus').beads).toEqual({ plus: 'to-lay' })
    shop.goesOn()
    expect(facts(shop, 'bead-minus').beads).toEqual({ plus: 'laid', minus: 'to-lay' })
    shop.goesOn()
    expect(facts(shop, 'close-case').beads).toEqual({ plus: 'laid', minus: 'laid' })
    expect(facts(shop, 'sump-run').beads).toEqual({})
  })
})
