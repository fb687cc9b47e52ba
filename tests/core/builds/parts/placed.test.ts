import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { audit } from '../../../../core/audit/index.ts'
import {
  placeRounds,
  buildSheet,
  decide,
  isStepDone,
  type BuildCommand,
} from '../../../../core/builds/index.ts'
import { placedKinds, placedPictures, pictureOfPlace, readSpec } from '../../../../core/engine/index.ts'
import { placedPicture } from '../../../../core/layout/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const moor = demoEngine('moor-flat-4')

function shopAt(step: string): Workshop {
  const shop = new Workshop(moor)
  shop.worksUpTo(step)
  return shop
}
/** Why the command is refused; null where it is not. */
function codeOf({ spec, state }: Workshop, command: BuildCommand): string | null {
  const decided = decide(spec, state, command, null)
  return decided.ok ? null : decided.problem.code
}
const isDone = (shop: Workshop, id: string) => isStepDone(shop.spec, shop.state, shop.step(id))
const oil = (place: string) => ({ type: 'do-place', step: 'oil-mains', place, round: 1, note: '' }) as const
const mark = (place: string, round: 1 | 2) =>
  ({ type: 'do-place', step: 'timing', place, round, note: '' }) as const

describe('a step that is done place by place', () => {
  it('is done when each of its places is, in any order', () => {
    const shop = shopAt('oil-mains')
    shop.does(oil('thrust'))
    shop.does(oil('backs'))
    expect(isDone(shop, 'oil-mains')).toBe(false)
    shop.does(oil('faces'))
    expect(isDone(shop, 'oil-mains')).toBe(true)
  })

  it('refuses a place that it does not have, and one that is done', () => {
    const shop = shopAt('oil-mains')
    expect(codeOf(shop, oil('camshaft'))).toBe('place-unknown')
    shop.does(oil('faces'))
    expect(codeOf(shop, oil('faces'))).toBe('place-done-already')
    // Only marks are looked at a second time.
    expect(codeOf(shop, { ...oil('faces'), round: 2 })).toBe('place-unknown')
  })

  it('is undone with a reason, and the reason stays on the sheet', () => {
    const shop = shopAt('oil-mains')
    const undo = { type: 'undo-place', step: 'oil-mains', place: 'faces', round: 1, reason: '' } as const
    expect(codeOf(shop, { ...undo, reason: 'dust blew in' })).toBe('place-not-done')
    shop.does(oil('faces'))
    expect(codeOf(shop, undo)).toBe('reason-missing')
    shop.does({ ...undo, reason: 'dust blew in' })
    shop.does(oil('faces'))
    const rows = buildSheet(shop.spec, shop.entries).placed.filter(({ step }) => step === 'Oil shells')
    expect(rows.map(({ undone }) => undone)).toEqual(['dust blew in', null])
  })

  it('keeps what was oiled from being opened from below, and lets a cleaned face be', () => {
    const shop = shopAt('oil-mains')
    const takeOut = { type: 'take-out-half', step: 'fit-mains', position: 'M1', half: 'upper' } as const
    shop.does(oil('faces'))
    expect(codeOf(shop, { ...takeOut, reason: 'a scratch' })).toBe('step-on-top')
    shop.does({ type: 'undo-place', step: 'oil-mains', place: 'faces', round: 1, reason: 'a scratch' })
    shop.does({ ...takeOut, reason: 'a scratch' })
    expect(isDone(shop, 'clean-case')).toBe(true)
  })
})

describe('marks that must meet', () => {
  it('are set first, and looked at again after the turns', () => {
    const shop = shopAt('timing')
    shop.does(mark('crank', 1))
    expect(codeOf(shop, mark('crank', 2))).toBe('marks-first')
    shop.does(mark('pump', 1))
    expect(isDone(shop, 'timing')).toBe(false)
    shop.does(mark('crank', 2))
    shop.does(mark('pump', 2))
    expect(isDone(shop, 'timing')).toBe(true)
  })

  it('that are set again are looked at again', () => {
    const shop = shopAt('timing')
    for (const round of [1, 2] as const) for (const place of ['crank', 'pump']) shop.does(mark(place, round))
    const undo = { type: 'undo-place', step: 'timing', place: 'pump', reason: 'one tooth off' } as const
    shop.does({ ...undo, round: 1 })
    const step = shop.step('timing')
    if (!('places' in step)) throw new Error('the step has no places')
    const open = placeRounds(shop.state, step).filter(({ done }) => done === null)
    expect(open.map(({ place, round }) => `${place.id} ${round}`)).toEqual(['pump 1', 'pump 2'])
  })
})

describe('a note', () => {
  const plate = (note: string) =>
    ({ type: 'do-place', step: 'plate', place: 'number', round: 1, note }) as const

  it('is what was read, and is on the sheet', () => {
    const shop = new Workshop(moor)
    expect(codeOf(shop, plate('  '))).toBe('reason-missing')
    shop.does(plate(' 4711, 1987 '))
    const [row] = buildSheet(shop.spec, shop.entries).placed
    expect(row).toMatchObject({
      ...{ kind: 'note', where: 'Plate on the left half', note: '4711, 1987' },
      // When it was noted, not where.
      at: shop.entries.at(-1)!.at,
    })
  })
})

describe('places in a spec', () => {
  it('are told apart', () => {
    const steps = moor.steps.map((step) =>
      step.id === 'timing' && step.kind === 'align'
        ? { ...step, places: step.places.map((place) => ({ ...place, id: 'crank' })) }
        : step,
    )
    expect(audit({ ...moor, steps }).map(({ problem }) => problem.code)).toContain('place-twice')
    expect(audit(moor)).toEqual([])
  })

  it('are wanted: a step without one cannot be read', () => {
    const written = JSON.parse(readFileSync('specs/moor-flat-4.json', 'utf8')) as { steps: object[] }
    written.steps[0] = { ...written.steps[0], places: [] }
    const text = JSON.stringify(written)
    const read = readSpec(text)
    const paths = read.ok ? [] : read.problems.map(({ path }) => path)
    expect(paths).toContain('steps[0].places')
  })
})

describe('the picture of a place', () => {
  it.each(placedPictures)('of %s lies on its sheet, and has what it points at', (what) => {
    const { width, height, lines } = placedPicture(what)
    expect(lines.length).toBeGreaterThan(2)
    for (const { points } of lines)
      points.forEach((value, index) => {
        expect(value).toBeGreaterThanOrEqual(0)
        expect(value).toBeLessThanOrEqual(index % 2 === 0 ? width : height)
      })
  })

  it('belongs to the kind of work unless the spec says another', () => {
    const place = { id: 'a', at: 'A', say: 'Do it.' }
    const usual = placedKinds.map((kind) => pictureOfPlace(kind, place))
    expect(usual).toEqual(['oil', 'face', 'piston-front', 'timing-marks', 'circlip-seated', 'writing'])
    expect(pictureOfPlace('lubricate', { ...place, picture: 'dry' })).toBe('dry')
  })
})
