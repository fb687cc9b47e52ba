import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import {
  askedPlaces,
  buildSheet,
  checkRules,
  currentStep,
  isStepDone,
  type BuildCommand,
} from '../../../../core/builds/index.ts'
import { readSpec } from '../../../../core/engine/index.ts'
import { shippedFile } from '../../../engine-files.ts'
import { demoEngine, newBuild, Workshop } from '../workshop.ts'

const moor = demoEngine('moor-flat-4')
const top1 = { step: 'ring-gaps', measure: 'top', at: 'Barrel 1' } as const
const measured = (typed: string): BuildCommand => ({ type: 'measure-limit', ...top1, typed })

function shopAt(): Workshop {
  const shop = new Workshop(moor)
  shop.worksUpTo('ring-gaps')
  return shop
}
function verdictOf(shop: Workshop, typed: string) {
  const [event] = shop.does(measured(typed))
  return event?.type === 'limit-measured' ? event.verdict : null
}

describe('a reading against limits: new 0.30 to 0.45 mm, service limit 0.90 mm', () => {
  it.each([
    ['0.30', 'new'],
    ['0.45 mm', 'new'],
    ['0.46', 'service'],
    ['0.90', 'service'],
    ['0.91', 'outside'],
    ['0.29', 'outside'],
    ['0.014 in', 'new'],
  ])('%s is %s', (typed, verdict) => {
    expect(verdictOf(shopAt(), typed)).toBe(verdict)
  })

  it('refuses a ring gap of 0, one below 0, what is no length, and a place that is not asked for', () => {
    const shop = shopAt()
    expect(shop.refusal(measured('0'))).toMatchObject({ code: 'ring-gap-zero', facts: { place: 'Barrel 1' } })
    for (const typed of ['-0.3', 'wide', '']) expect(shop.refuses(measured(typed))).toMatch(/\.$/)
    expect(shop.refusal({ ...top1, type: 'measure-limit', typed: '0.3', at: 'Barrel 9' })).toMatchObject({
      code: 'measure-unknown',
      facts: { step: 'Rings, pistons', place: 'Barrel 9' },
    })
  })

  it('outside its limits keeps the step open until it is measured again, accepted or replaced', () => {
    const shop = shopAt()
    const open = () =>
      askedPlaces(moor, shop.state, moor.steps.find(({ id }) => id === 'ring-gaps') as never)[0]!
    const accept = { type: 'accept-measured', ...top1, reason: '' } as const
    expect(shop.refusal({ ...accept, reason: 'fine' })).toMatchObject({
      code: 'nothing-outside',
      facts: { name: 'Top ring', place: 'Barrel 1' },
    })
    shop.does(measured('1.2'))
    expect(open().settled).toBe(false)
    expect(shop.refusal(accept)).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'limit-accepted', name: 'Top ring', place: 'Barrel 1' } },
    })
    shop.does({ ...accept, reason: 'last season of this barrel' })
    expect(open()).toMatchObject({ settled: true, measured: { accepted: 'last season of this barrel' } })
    shop.does(measured('1.3'))
    expect(open().settled).toBe(false)
    shop.does({ type: 'replace-measured', ...top1, reason: 'new ring set' })
    expect(open()).toMatchObject({ settled: false, measured: null })
    shop.does(measured('0.35'))
    expect(open().settled).toBe(true)
    while (currentStep(shop.spec, shop.state)?.id === 'ring-gaps') shop.goesOn()
    expect(isStepDone(shop.spec, shop.state, shop.step('ring-gaps'))).toBe(true)
    const rows = buildSheet(shop.spec, shop.entries).limits.filter(
      ({ place, measure }) => place === 'Barrel 1' && measure.id === 'top',
    )
    expect(
      rows.map(({ reading, counts, accepted, replaced }) => [reading.typed, counts, accepted, replaced]),
    ).toEqual([
      ['1.2', false, 'last season of this barrel', null],
      ['1.3', false, null, 'new ring set'],
      ['0.35', true, null, null],
    ])
    const check = checkRules(shop.spec, newBuild.specSha256, shop.entries)
    let turn = check.next()
    while (!turn.done) turn = check.next()
    expect(turn.value).toBeNull()
  })
})

describe('the place of a reading', () => {
  const german = readSpec(readFileSync(shippedFile('moor-flat-4'), 'utf8'), 'de')

  it('is recorded alike whatever language the window speaks, and called in its language on the sheet', () => {
    if (!german.ok) throw new Error('the spec cannot be read')
    const shop = shopAt()
    const step = moor.steps.find(({ id }) => id === 'ring-gaps') as never
    const [inGerman] = askedPlaces(german.spec, shop.state, step)
    expect(inGerman).toMatchObject({ at: 'Barrel 1', place: 'Zylinder 1' })
    shop.does({ ...top1, type: 'measure-limit', at: inGerman!.at, typed: '1.2' })
    shop.does({ ...top1, type: 'replace-measured', reason: 'new ring' })
    const { limits, corrections } = buildSheet(german.spec, shop.entries)
    expect(limits.at(-1)).toMatchObject({ place: 'Zylinder 1', replaced: 'new ring', counts: false })
    expect(corrections.at(-1)?.about).toMatchObject({ facts: { part: 'Zylinder 1' } })
  })
})
