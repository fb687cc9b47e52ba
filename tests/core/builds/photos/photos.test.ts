import { describe, expect, it } from 'vitest'
import {
  buildEvent,
  buildSheet,
  checkRules,
  handsIn,
  isStepDone,
  photosAt,
  type BuildCommand,
} from '../../../../core/builds/index.ts'
import { mostPhotosOfBuild } from '../../../../core/photo/index.ts'
import { demoEngine, newBuild, Workshop } from '../workshop.ts'

const holm = demoEngine('holm-2')
const moor = demoEngine('moor-flat-4')

type AddPhoto = Extract<BuildCommand, { type: 'add-photo' }>

function photo(step: string | null, digit = 'a', more: Partial<AddPhoto> = {}): AddPhoto {
  return {
    type: 'add-photo',
    ...{ step, caption: '', part: null },
    photo: {
      sha256: digit.repeat(64),
      mediaType: 'image/jpeg',
      ...{ widthPx: 1600, heightPx: 1200, sizeBytes: 412_000 },
    },
    ...more,
  }
}

function finished(): Workshop {
  const shop = new Workshop(holm)
  while (!shop.state.finished) shop.goesOn()
  return shop
}

describe('a photo', () => {
  it('belongs to any step, also to one that is done or still waits', () => {
    const shop = new Workshop(holm)
    shop.worksThrough('case-marks')
    shop.does(photo('case-marks', 'a', { caption: '  Marks on the lower face  ' }))
    shop.does(photo('close-case', 'b'))
    expect(photosAt(shop.state, 'case-marks')).toMatchObject([
      { caption: 'Marks on the lower face', part: null },
    ])
    expect(photosAt(shop.state, 'close-case')).toHaveLength(1)
  })

  it('is no work: a person comes back to the step they were at, and what a second person said stays', () => {
    const shop = new Workshop(holm)
    shop.worksThrough('case-marks')
    const { workedOn } = shop.state
    shop.does(photo('last-look'))
    expect(shop.state.workedOn).toBe(workedOn)
  })

  it('of the same bytes is added to a step once, and to another one again', () => {
    const shop = new Workshop(holm)
    shop.does(photo('case-marks'))
    expect(shop.refuses(photo('case-marks'))).toContain('is here already')
    expect(shop.does(photo('crank-marks'))).toHaveLength(1)
  })

  it('names a part of the list, and none that is not there', () => {
    const shop = new Workshop(moor)
    const [part] = moor.parts
    const [step] = moor.steps
    shop.does(photo(step!.id, 'a', { part: part!.id }))
    expect(buildSheet(moor, shop.entries).photos).toMatchObject([{ part: part!.name }])
    expect(shop.refuses(photo(step!.id, 'b', { part: 'flywheel' }))).toContain('flywheel')
  })

  it('belongs to a step while the build is open, and to none once it is finished', () => {
    const shop = finished()
    expect(new Workshop(holm).refusal(photo(null))).toMatchObject({ code: 'photo-at-no-step' })
    expect(shop.refuses(photo('case-marks'))).toContain('is finished')
    shop.does(photo(null, 'c', { caption: 'On the stand' }))
    expect(buildSheet(holm, shop.entries).photos).toMatchObject([{ step: null, caption: 'On the stand' }])
  })

  it('is not added where there are as many as an export has room for', () => {
    const shop = new Workshop(holm)
    const steps = holm.steps.filter(({ kind }) => kind !== 'photo')
    for (let at = 0; at < mostPhotosOfBuild; at += 1)
      shop.does(photo(steps[at % steps.length]!.id, '0123456789abcdef'[Math.floor(at / steps.length)]))
    expect(shop.refuses(photo('case-marks', 'f'))).toContain(`${mostPhotosOfBuild} photos`)
  })

  it.each([
    ['another kind of file', { mediaType: 'image/svg+xml' }],
    ['a hash that is none', { sha256: 'A'.repeat(64) }],
    ['no pixels', { widthPx: 0 }],
    ['half a pixel', { heightPx: 0.5 }],
    ['more than is kept', { sizeBytes: 2_000_000 }],
    ['a member more', { exif: {} }],
  ])('is no entry with %s', (_, change) => {
    const { type: __, ...command } = photo('case-marks')
    const event = { type: 'photo-added', version: 1, ...command }
    expect(buildEvent.safeParse(event).success).toBe(true)
    expect(buildEvent.safeParse({ ...event, photo: { ...event.photo, ...change } }).success).toBe(false)
  })
})

describe('a step that asks for a photo', () => {
  const step = holm.steps.find(({ id }) => id === 'gear-photo')!

  it('waits for the steps before it, is done by a photo, and is nobody’s work but the photographer’s', () => {
    const shop = new Workshop(holm)
    expect(shop.refuses(photo('gear-photo'))).toContain('comes later')
    shop.worksThrough('lines-meet')
    expect(isStepDone(holm, shop.state, step)).toBe(false)
    shop.person = 'Ben'
    shop.does(photo('case-marks', 'b'))
    expect(handsIn(holm, shop.entries, step)).toEqual([])
    shop.does(photo('gear-photo'))
    expect(isStepDone(holm, shop.state, step)).toBe(true)
    expect(handsIn(holm, shop.entries, step)).toEqual(['Ben'])
  })

  it('goes without one for a reason, which stands on the sheet', () => {
    const shop = new Workshop(holm)
    shop.worksThrough('lines-meet')
    expect(shop.refusal({ type: 'skip-photo', step: 'gear-photo', reason: ' ' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'photo-skipped', step: 'Gear photo' } },
    })
    shop.does({ type: 'skip-photo', step: 'gear-photo', reason: 'No camera here' })
    expect(isStepDone(holm, shop.state, step)).toBe(true)
    expect(shop.refuses({ type: 'skip-photo', step: 'gear-photo', reason: 'Again' })).toContain(
      'done already',
    )
    const place = holm.steps.indexOf(step) + 1
    expect(buildSheet(holm, shop.entries).photosSkipped).toMatchObject([
      { step: { place, name: 'Gear photo' }, reason: 'No camera here' },
    ])
  })

  it('takes a photo after all', () => {
    const shop = new Workshop(holm)
    shop.worksThrough('gear-photo')
    shop.does(photo('gear-photo'))
    expect(photosAt(shop.state, 'gear-photo')).toHaveLength(1)
    const { photos, photosSkipped } = buildSheet(holm, shop.entries)
    expect([photos.length, photosSkipped]).toEqual([1, []])
  })
})

describe('a note', () => {
  it('is written at any step, outside a run too, and is no work on it', () => {
    const shop = new Workshop(holm)
    shop.does({ type: 'write-note', step: 'close-case', text: '  Dowel 2 is tight  ' })
    shop.does({ type: 'write-note', step: 'case-marks', text: 'Read with a glass' })
    expect(buildSheet(holm, shop.entries).notes).toMatchObject([
      { step: { name: 'Close case' }, text: 'Dowel 2 is tight', person: 'Ada' },
      { step: { name: 'Case marks' }, text: 'Read with a glass' },
    ])
    expect(shop.state.workedOn).toBeNull()
  })

  it('of nothing is refused', () => {
    expect(new Workshop(holm).refuses({ type: 'write-note', step: 'case-marks', text: ' \n' })).toContain(
      'nothing to note',
    )
  })
})

describe('a build with photos and notes', () => {
  it('holds against the rules, entry for entry, and with an altered one does not', () => {
    const shop = new Workshop(holm)
    shop.does(photo('case-marks'))
    shop.does({ type: 'write-note', step: 'case-marks', text: 'Read with a glass' })
    while (!shop.state.finished) shop.goesOn()
    shop.does(photo(null, 'd'))
    const against = (entries: typeof shop.entries) => [...checked(entries)].at(-1)
    function* checked(entries: typeof shop.entries) {
      yield yield* checkRules(holm, newBuild.specSha256, entries)
    }
    expect(against(shop.entries)).toBeNull()
    const early = shop.entries.map((entry) =>
      entry.event.type === 'photo-added' && entry.event.step === null
        ? { ...entry, event: { ...entry.event, step: 'case-marks' } }
        : entry,
    )
    expect(against(early)).toMatchObject({ why: { code: 'build-finished' } })
  })
})

describe('a photo that is withdrawn', () => {
  it('is on the sheet as withdrawn, with its hash, and not among the photos', () => {
    const shop = new Workshop(holm)
    shop.does(photo('case-marks', 'a'))
    shop.does(photo('case-marks', 'b'))
    shop.does({ type: 'withdraw-photo', entry: 2, reason: 'It shows a face' })
    const sheet = buildSheet(holm, shop.entries)
    expect(sheet.photos.map((each) => each.photo.sha256[0])).toEqual(['b'])
    expect(sheet.photosWithdrawn).toMatchObject([{ sha256: 'a'.repeat(64), reason: 'It shows a face' }])
  })

  it('leaves a step that asks for one open, but a finished build finished', () => {
    const shop = new Workshop(holm)
    shop.worksUpTo('gear-photo')
    shop.does(photo('gear-photo'))
    const entry = shop.entries.length
    const step = shop.step('gear-photo')
    expect(isStepDone(holm, shop.state, step)).toBe(true)
    const withdraw = { type: 'withdraw-photo', entry, reason: 'It is blurred' } as const
    const asItWas = shop.state
    shop.does(withdraw)
    expect(isStepDone(holm, shop.state, step)).toBe(false)
    const another = new Workshop(holm)
    another.state = asItWas
    while (!another.state.finished) another.goesOn()
    another.does(withdraw)
    expect(isStepDone(holm, another.state, step)).toBe(true)
  })
})
