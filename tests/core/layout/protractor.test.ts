import { describe, expect, it } from 'vitest'
import {
  bareFacts,
  directionTo,
  knobPlace,
  protractorPlace,
  sceneOf,
  textBox,
  withProtractor,
} from '../../../core/layout/index.ts'
import type { HandleDirections, Scene } from '../../../core/layout/index.ts'
import { degrees } from '../../../core/quantity/index.ts'
import { protractor, type PullWindow } from '../../../core/tightening/index.ts'
import { meetsCircle, textsOf } from './checks.ts'
import { demos, factsAt } from './demos.ts'
import { winchEngine } from '../tightening/winch-engine.ts'
import { en } from '../../../core/words/index.ts'

const sheet = { widthPx: 900, heightPx: 500, capitalPx: 12 }
const facts = bareFacts('block')
const scene: Scene = sceneOf(en, winchEngine, facts, { from: 'below', turn: 0 }, sheet)
const px = scene.frame.width / sheet.widthPx

const hundred = {
  kind: 'angle',
  target: degrees(100),
  least: degrees(95),
  most: degrees(105),
  tolerance: 'spec',
} as const satisfies PullWindow

function directions(start: number, sense: 'clockwise' | 'anticlockwise'): HandleDirections {
  return { ...protractor(degrees(start), hundred, sense), sense, turned: hundred.target }
}

const drawn = withProtractor(en, scene, 'cap-2', directions(30, 'clockwise'), px)
const place = protractorPlace(scene, 'cap-2', px)!
const shape = (id: string) => drawn.shapes.find((each) => each.id === `protractor/${id}`)!

/** The clockwise direction from straight up in which a point of a shape lies from the fastener. */
function directionOf(id: string): number {
  const found = shape(id)
  if (found.kind === 'circle') return directionTo(place, found)
  if (found.kind !== 'line') throw new Error(`${id} has no direction`)
  return directionTo(place, { x: found.points[0]!, y: found.points[1]! })
}

describe('the protractor on the drawing', () => {
  it('starts where the handle is and ends 100° further', () => {
    expect(directionOf('start/knob')).toBeCloseTo(30, 6)
    expect(directionOf('end/knob')).toBeCloseTo(130, 6)
  })

  it('marks each whole flat on the way: 100° is one flat and two thirds', () => {
    expect(drawn.shapes.filter(({ id }) => id.startsWith('protractor/flat/'))).toHaveLength(1)
    expect(directionOf('flat/1')).toBeCloseTo(90, 6)
  })

  it('has a wedge from the least to the most that is allowed', () => {
    const wedge = shape('wedge')
    if (wedge.kind !== 'line') throw new Error('a wedge is a line')
    const points = Array.from({ length: wedge.points.length / 2 }, (_, index) =>
      directionTo(place, { x: wedge.points[2 * index]!, y: wedge.points[2 * index + 1]! }),
    )
    expect(Math.min(...points)).toBeCloseTo(125, 6)
    expect(Math.max(...points)).toBeCloseTo(135, 6)
  })

  it('goes the other way round on a drawing seen from the far side', () => {
    const mirrored = withProtractor(en, scene, 'cap-2', directions(30, 'anticlockwise'), px)
    const knob = mirrored.shapes.find(({ id }) => id === 'protractor/end/knob')
    expect(knob?.kind === 'circle' && directionTo(place, knob)).toBeCloseTo(290, 6)
  })

  it('is described in words', () => {
    expect(drawn.rows.at(-1)?.text).toBe(
      'Protractor: the handle starts at 30° (1 o’clock) and comes to 130° (4 o’clock) after 100°, clockwise.',
    )
  })

  it('is not drawn for a fastener of another face', () => {
    expect(withProtractor(en, scene, 'rod-1', directions(0, 'clockwise'), px)).toBe(scene)
  })

  it('has its knobs clear of every other number wherever the handle stands, on every face that is turned by an angle', () => {
    const boards = [
      { widthPx: 600, heightPx: 430, capitalPx: 12 },
      { widthPx: 842, heightPx: 494, capitalPx: 12 },
      { widthPx: 1400, heightPx: 760, capitalPx: 18 },
    ]
    const turned = demos.flatMap((spec) =>
      spec.procedures
        .filter(({ passes }) => passes.some(({ kind }) => kind === 'angle'))
        .map(({ face }) => ({ spec, face })),
    )
    expect(turned).toHaveLength(11)
    let looked = 0
    const covered: string[] = []
    for (const { spec, face } of turned)
      for (const board of boards) {
        const drawn = sceneOf(en, spec, factsAt(spec, face, 'mid run'), { from: 'below', turn: 0 }, board)
        const px = drawn.frame.width / board.widthPx
        const numbers = textsOf(drawn).filter(({ id }) => /^fastener\/.+\/number$/.test(id))
        for (const { id } of spec.fasteners.filter((fastener) => fastener.face === face)) {
          const place = protractorPlace(drawn, id, px)!
          for (let direction = 0; direction < 360; direction += 5) {
            looked += 1
            const { x, y } = knobPlace(place, degrees(direction))
            const knob = { id, x, y, radius: 10 * px }
            for (const number of numbers)
              if (number.about !== `fastener/${id}` && meetsCircle(textBox(number), knob))
                covered.push(`${spec.id} ${id} at ${direction}°, ${board.widthPx} px: ${number.id}`)
          }
        }
      }
    expect(covered).toEqual([])
    expect(looked).toBeGreaterThan(20_000)
  })
})
