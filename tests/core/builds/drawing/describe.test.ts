import { describe, expect, it } from 'vitest'
import { drawingFacts, descriptionOf, type Description } from '../../../../core/builds/index.ts'
import { sceneOf } from '../../../../core/layout/index.ts'
import type { Units } from '../../../../core/tightening/index.ts'
import { demos } from '../../layout/demos.ts'
import { sumpByStretch } from '../sump-by-stretch.ts'
import { demoEngine, Workshop } from '../workshop.ts'
import { en } from '../../../../core/words/index.ts'

const skerry = demoEngine('skerry-3')

function tell(shop: Workshop, about: string, units: Units = { torque: 'N·m', length: 'mm' }): Description {
  const description = descriptionOf(
    { words: en, spec: shop.spec, state: shop.state, entries: shop.entries, units },
    about,
  )
  if (description === null) throw new Error(`${about} is not described`)
  return description
}

/** Each line with its state before it and the person after it. */
const linesOf = ({ lines }: Description) =>
  lines.map(({ state, text, by }) => `${state}: ${text}${by === undefined ? '' : ` (${by.person})`}`)

/** At the closing of the case, the first torque pass begun: 2 entries before it, 8 seated, fasteners 1 and 2 at 15 N·m. */
function inTheFirstTorque(): Workshop {
  const shop = new Workshop(skerry)
  shop.worksUpTo('case-run')
  for (let entry = 0; entry < 2 + 8 + 2; entry++) shop.goesOn()
  return shop
}

describe('a fastener', () => {
  it('that is tightened to a stretch says how much longer it is, and at which torque', () => {
    const shop = new Workshop(sumpByStretch())
    shop.worksUpTo('sump-run')
    while (shop.state.runs['sump']?.pulls.at(-1)?.pass !== 2) shop.goesOn()
    const [fastener] = shop.spec.procedures.find(({ id }) => id === 'sump')!.orders[0]!.sequence
    // It measured 80 mm before, and was tightened until it was 0.04 mm longer, at the middle of 5 to 12 N·m.
    expect(linesOf(tell(shop, `fastener/${fastener}`)).at(-1)).toBe(
      'done: Pass 3, tighten to a stretch: 0.020 mm to 0.040 mm · read 80.04 mm, 0.040 mm longer, at 8.5 N·m (Ada)',
    )
  })

  it('is described by number and place, thread, clamped length, and whether it may be used again', () => {
    const shop = new Workshop(skerry)
    const description = tell(shop, 'fastener/case-1')
    expect(description.title).toBe('Fastener 1, saddle 2, pump side')
    expect(linesOf(description).slice(0, 2)).toEqual([
      'plain: Case bolts: M10 × 1.25, 10.9, oiled, 92 mm clamped, on its washer',
      'plain: New each time: may be used once only',
    ])
    expect(linesOf(tell(shop, 'fastener/flange-9'))[1]).toBe('plain: May be used again')
  })

  it('is described pass by pass with limits, readings, and who pulled it', () => {
    expect(linesOf(tell(inTheFirstTorque(), 'fastener/case-2')).slice(1)).toEqual([
      'done: New each time: declared new (Ada)',
      'done: Pass 1, seat by hand · done (Ada)',
      'done: Pass 2, torque: 15 N·m (13.5 to 16.5) · read 15 N·m (Ada)',
      'open: Pass 3, torque: 32 N·m (30 to 34)',
      'open: Pass 5, angle: 60° (57 to 63)',
    ])
  })

  it('is next in one pass only', () => {
    const lines = linesOf(tell(inTheFirstTorque(), 'fastener/case-3'))
    expect(lines.filter((line) => line.startsWith('next'))).toEqual([
      'next: Pass 2, torque: 15 N·m (13.5 to 16.5)',
    ])
  })

  it('is described in the unit of the wrench in use: 15 N·m is 11.06 lbf·ft (NIST SP 811)', () => {
    const lines = linesOf(tell(inTheFirstTorque(), 'fastener/case-4', { torque: 'lbf·ft', length: 'in' }))
    expect(lines).toContain('open: Pass 2, torque: 11.1 lbf·ft (10 to 12.1)')
  })

  it('says what was flagged at it, and the answer once there is one', () => {
    const shop = inTheFirstTorque()
    const reading = { typed: '18', unit: 'N·m' } as const
    const procedure = 'case'
    shop.does({
      type: 'pull',
      procedure,
      pass: 1,
      fastener: 'case-3',
      reading,
      moved: false,
      outOfOrder: null,
    })
    expect(linesOf(tell(shop, 'fastener/case-3'))).toContain(
      'flagged: Pass 2, torque: 15 N·m (13.5 to 16.5) · read 18 N·m · too much (Ada)',
    )
    shop.person = 'Ben'
    shop.does({ type: 'note-problem', procedure, fastener: 'case-2', text: 'Thread feels rough' })
    expect(linesOf(tell(shop, 'fastener/case-2')).at(-1)).toBe(
      'flagged: Fastener 2: Thread feels rough (Ben)',
    )
    shop.person = 'Cy'
    shop.does({ type: 'answer-flag', procedure, flag: 2, answer: 'Chased, runs free' })
    expect(linesOf(tell(shop, 'fastener/case-2')).at(-1)).toBe(
      'done: Fastener 2: Thread feels rough · answered: Chased, runs free (Cy)',
    )
  })

  it('says why it went before its turn', () => {
    const shop = inTheFirstTorque()
    const reading = { typed: '15', unit: 'N·m' } as const
    const outOfOrder = 'The next one cannot be reached yet'
    const pull = {
      type: 'pull',
      procedure: 'case',
      pass: 1,
      fastener: 'case-7',
      reading,
      moved: false,
    } as const
    shop.does({ ...pull, outOfOrder })
    expect(linesOf(tell(shop, 'fastener/case-7'))).toContain(
      `done: Pass 2, torque: 15 N·m (13.5 to 16.5) · read 15 N·m · before its turn: ${outOfOrder} (Ada)`,
    )
  })
})

describe('a half of a bearing', () => {
  it('is described by its shell, why that one, the clearance, the marks, and who put it in', () => {
    const shop = new Workshop(skerry)
    shop.worksUpTo('fit-mains')
    const position = 'M2'
    const before = tell(shop, 'half/M2/upper')
    expect(before.title).toBe('Saddle M2, upper half')
    expect(before.grade).toMatchObject({ grade: 'T', pattern: 'bars' })
    expect(linesOf(before)).toEqual([
      'plain: Grade T, pattern bars',
      'plain: The chart gives this for housing mark 2 and journal mark G.',
      'plain: Oil clearance 35 µm (26 to 44), inside the limits; 20 to 50 µm allowed',
      'plain: Marks: housing 2, journal G',
      'open: To be fitted',
      'plain: Half with the oil groove and the hole, the hole over the oil way; tang in its notch.',
    ])
    shop.person = 'Ben'
    shop.does({ type: 'fit-half', step: 'fit-mains', position, half: 'upper' })
    expect(linesOf(tell(shop, 'half/M2/upper'))).toContain('done: In place (Ben)')
  })

  it('is a proposal while shells are chosen, and unknown before marks are noted', () => {
    const shop = new Workshop(skerry)
    expect(linesOf(tell(shop, 'half/M2/upper'))[0]).toBe('plain: Shell not chosen yet')
    shop.worksUpTo('choose-mains')
    expect(linesOf(tell(shop, 'half/M2/upper'))[0]).toBe('plain: Proposed: grade T, pattern bars')
  })

  it('says a person’s own reason, and flags a clearance that may leave the limits', () => {
    const shop = new Workshop(skerry)
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '3 3 3 3' })
    shop.does({ type: 'note-marks', step: 'crank-marks', typed: 'HHHH' })
    const others = (['upper', 'lower'] as const).map((half) => ({
      ...{ position: 'M1', half, grade: 'R', reason: 'Nothing else there.' },
    }))
    shop.does({ type: 'choose-shells', step: 'choose-mains', others })
    const lines = linesOf(tell(shop, 'half/M1/lower'))
    expect(lines[1]).toBe('plain: Nothing else there.')
    expect(lines[2]).toMatch(/^flagged: Oil clearance 59 µm .*, may be too loose; 20 to 50 µm allowed$/)
  })
})

describe('the rest of the drawing', () => {
  const shop = new Workshop(skerry)
  shop.worksUpTo('close-case')

  it.each([
    ['thrust/M3', 'Thrust washers at saddle M3', 'plain: End float of the crank: 0.08 mm to 0.2 mm'],
    ['dowel/dowel-1', 'Dowel', 'plain: 10 mm across, Case joint'],
    ['bead/plus', 'Bead, pump side', 'done: Laid (Ada)'],
    [
      'keep-out/minus/1',
      'oil way to the gallery',
      'plain: No sealant here: “Bead, gear side” passes beside it',
    ],
    ['oil-passage/gallery', 'Oil passage: oil way to the gallery', 'plain: Sealant must stay out of it'],
    ['bore/2', 'Bore 2', 'plain: Its rod’s big end: B2'],
    ['journal/M1', 'Main journal M1', 'plain: Mark F'],
    ['face/joint', 'Case joint', 'plain: Worked on from below'],
    ['opening/1', 'Opening', 'plain: Open through this face: nothing seals or clamps here'],
    ['nose', 'Nose', 'plain: The front end of the crank: everything is counted from here'],
    ['drive', 'Drive end', 'plain: The end of the crank that drives, opposite the nose'],
  ])('%s is described', (about, title, line) => {
    const description = tell(shop, about)
    expect(description.title).toBe(title)
    expect(linesOf(description)).toContain(line)
  })

  it('tells the checks of a face with what was read and who looked', () => {
    expect(linesOf(tell(shop, 'face/joint')).join('\n')).toMatch(
      /done: End float: good, read 0\.\d+ mm \(Ada\)/,
    )
    expect(linesOf(tell(shop, 'thrust/M3')).join('\n')).toMatch(
      /done: End float: good, read 0\.\d+ mm \(Ada\)/,
    )
  })

  it('has nothing to say of what the spec does not know', () => {
    const units = { torque: 'N·m', length: 'mm' } as const
    const context = { words: en, spec: skerry, state: shop.state, entries: shop.entries, units }
    for (const about of [
      'fastener/none',
      'half/M9/upper',
      'dowel/none',
      'protractor',
      'bead/none',
      'face/lid',
    ])
      expect(descriptionOf(context, about), about).toBeNull()
  })
})

describe.each(demos.map((spec) => ({ spec, name: spec.id })))(
  'everything on the drawings of $name',
  ({ spec }) => {
    it('is described at the start and at the end of a build, with a line at the least', () => {
      const shop = new Workshop(spec)
      const check = () => {
        const abouts = new Set<string>()
        for (const step of spec.steps) {
          const sheet = { widthPx: 940, heightPx: 700, capitalPx: 12 }
          const { rows } = sceneOf(
            en,
            spec,
            drawingFacts(en, spec, shop.state, step),
            { from: 'above', turn: 0 },
            sheet,
          )
          expect(rows.length, step.id).toBeGreaterThan(0)
          for (const { about } of rows) abouts.add(about)
        }
        for (const about of abouts) expect(tell(shop, about).lines.length, about).toBeGreaterThan(0)
      }
      check()
      while (!shop.state.finished) shop.goesOn()
      check()
    })
  },
)
