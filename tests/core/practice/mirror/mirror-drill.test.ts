import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { aboutAt, bareFacts, boxAbout, sceneOf, type Scene } from '../../../../core/layout/index.ts'
import {
  asLying,
  candidatesOf,
  drillsOf,
  judgeMirror,
  mirrorDrill,
  printedView,
  type MirrorQuestion,
} from '../../../../core/practice/index.ts'
import { inMillimetres } from '../../../../core/quantity/index.ts'
import { en } from '../../../../core/words/index.ts'
import { checkProperty } from '../../../property.ts'
import { anyEngine } from '../../layout/any-engine.ts'
import { demo, demos } from '../../layout/demos.ts'

const seeds = fc.integer({ min: 0, max: 10_000 }).map((round) => `round ${round}`)
const engines = fc.oneof({ arbitrary: fc.constantFrom(...demos), weight: 3 }, anyEngine)
const sheet = { widthPx: 900, heightPx: 640, capitalPx: 18 }

const faceOf = (spec: EngineSpec, { face }: MirrorQuestion) => spec.case.faces.find(({ id }) => id === face)!
const factsOf = (question: MirrorQuestion) =>
  ({ ...bareFacts(question.face), subject: question.kind === 'shell' ? 'shells' : 'tightening' }) as const
const drawn = (spec: EngineSpec, question: MirrorQuestion, view = question.view) =>
  sceneOf(en, spec, factsOf(question), view, sheet)
const middleOf = (scene: Scene, about: string) => {
  const disc = scene.shapes.find((shape) => shape.about === about && shape.kind === 'circle')
  if (disc?.kind === 'circle') return disc
  const { left, top, width, height } = boxAbout(scene, about)!
  return { x: left + width / 2, y: top + height / 2 }
}

describe('a mirror drill', () => {
  it('asks for places that can be tapped on a drawing that does not lie as printed', () => {
    let questions = 0
    checkProperty(
      fc.property(engines, seeds, (spec, seed) => {
        for (const question of mirrorDrill(spec, seed)!.questions) {
          expect(question.view).not.toEqual(printedView(faceOf(spec, question)))
          const scene = asLying(en, spec, question, drawn(spec, question), null)
          const { x, y } = middleOf(scene, question.key)
          expect(aboutAt(scene, { x, y }, 0.01)).toBe(question.key)
          expect(judgeMirror(spec, question, question.key)).toBeNull()
          questions += 1
        }
      }),
      { numRuns: 60, leastShare: 0.95 },
    )
    expect(questions).toBeGreaterThan(150)
  })

  it('asks for the fastener that has that number on the same drawing with its numbers', () => {
    let questions = 0
    checkProperty(
      fc.property(engines, seeds, (spec, seed) => {
        for (const question of mirrorDrill(spec, seed)!.questions) {
          if (question.kind === 'shell') continue
          const { number } = spec.fasteners.find(({ id }) => id === question.fastener)!
          const named = drawn(spec, question).shapes.filter(
            (shape) => shape.kind === 'text' && shape.text === number && shape.about?.startsWith('fastener/'),
          )
          expect(named.map(({ about }) => about)).toEqual([question.key])
          questions += 1
        }
      }),
      { numRuns: 60, leastShare: 0.8 },
    )
    expect(questions).toBeGreaterThan(80)
  })

  it('asks for the saddle that comes in that place from the arrow at the nose', () => {
    let questions = 0
    checkProperty(
      fc.property(engines, seeds, (spec, seed) => {
        for (const question of mirrorDrill(spec, seed)!.questions) {
          if (question.kind !== 'shell') continue
          const scene = drawn(spec, question)
          const nose = middleOf(scene, 'nose')
          const fromNose = candidatesOf(spec, question)
            .map(({ about }) => ({ about, at: middleOf(scene, about) }))
            .toSorted(
              (a, b) =>
                Math.hypot(a.at.x - nose.x, a.at.y - nose.y) - Math.hypot(b.at.x - nose.x, b.at.y - nose.y),
            )
          const alongCrank = spec.case.saddles.toSorted((a, b) => inMillimetres(a.at) - inMillimetres(b.at))
          const place = alongCrank.findIndex(({ id }) => id === question.position)
          expect(fromNose[place]!.about).toBe(question.key)
          // A half that lies with its joint up is seen from above; the upper one had to be turned over for it.
          expect(question.view.from).toBe(question.half === 'upper' ? 'below' : 'above')
          questions += 1
        }
      }),
      { numRuns: 60, leastShare: 0.8 },
    )
    expect(questions).toBeGreaterThan(80)
  })

  it('says mirrored where three places go round the other way than on the printed drawing, and only there', () => {
    const seen = { mirrored: 0, turned: 0 }
    checkProperty(
      fc.property(fc.constantFrom(...demos), seeds, (spec, seed) => {
        for (const question of mirrorDrill(spec, seed)!.questions) {
          if (question.kind === 'shell') continue
          const [lying, printed] = [
            drawn(spec, question),
            drawn(spec, question, printedView(faceOf(spec, question))),
          ]
          const abouts = candidatesOf(spec, question).map(({ about }) => about)
          const corners = [abouts[0]!, abouts[1]!, abouts.at(-1)!]
          const round = (scene: Scene) => {
            const [a, b, c] = corners.map((about) => middleOf(scene, about))
            return (b!.x - a!.x) * (c!.y - a!.y) - (c!.x - a!.x) * (b!.y - a!.y)
          }
          if (Math.abs(round(printed)) < 1) continue
          expect(Math.sign(round(lying)) !== Math.sign(round(printed))).toBe(question.isMirrored)
          seen[question.isMirrored ? 'mirrored' : 'turned'] += 1
        }
      }),
      { numRuns: 80, leastShare: 0.5 },
    )
    expect(Math.min(seen.mirrored, seen.turned)).toBeGreaterThan(15)
  })

  it('leaves no number and no name on the drawing, and says in the list only where a place lies on the sheet', () => {
    checkProperty(
      fc.property(engines, seeds, (spec, seed) => {
        for (const question of mirrorDrill(spec, seed)!.questions) {
          const { shapes, rows } = asLying(en, spec, question, drawn(spec, question), null)
          const places = candidatesOf(spec, question)
          const abouts = new Set(places.map(({ about }) => about))
          const texts = shapes.filter((shape) => shape.kind === 'text')
          expect(texts.filter(({ about }) => about !== undefined && abouts.has(about))).toEqual([])
          const saddles = new Set(spec.case.saddles.map(({ id }) => id))
          expect(texts.filter(({ text }) => saddles.has(text))).toEqual([])
          const own = rows.filter(({ about }) => abouts.has(about))
          expect(own).toHaveLength(places.length)
          expect(new Set(own.map(({ text }) => text)).size).toBe(places.length)
          expect(own.every(({ text }) => /^Place \d+ of \d+ from the (left|top)/.test(text))).toBe(true)
        }
      }),
      { numRuns: 40, leastShare: 0.95 },
    )
  })

  it('is the same for the same seed, and lies in many ways over many rounds', () => {
    const spec = demo('skerry-3')
    expect(mirrorDrill(spec, 'a')).toEqual(mirrorDrill(spec, 'a'))
    const ways = Array.from({ length: 80 }, (_, round) => mirrorDrill(spec, `round ${round}`)!).flatMap(
      ({ questions }) =>
        questions.map(({ kind, orientation, view }) => `${kind} ${orientation} ${view.from} ${view.turn}`),
    )
    // Shells: 4 turns for each half, but for the printed one. Fasteners: 7 lying flat, and on either side from above and below.
    expect(new Set(ways).size).toBeGreaterThan(14)
  })

  it('is not offered for a case with one saddle and one fastener', () => {
    const spec = demo('skerry-3')
    const lone = {
      ...spec,
      case: { ...spec.case, saddles: spec.case.saddles.slice(0, 1) },
      fasteners: spec.fasteners.slice(0, 1),
    }
    expect(mirrorDrill(lone, 'a')).toBeNull()
    expect(drillsOf(lone)).not.toContain('mirror')
    expect(
      mirrorDrill({ ...lone, fasteners: spec.fasteners.slice(0, 2) }, 'a')?.questions.length,
    ).toBeGreaterThan(0)
  })
})

describe('a slip in a mirror drill', () => {
  const spec = demo('skerry-3')
  const all = Array.from({ length: 60 }, (_, round) => mirrorDrill(spec, `round ${round}`)!.questions).flat()

  it('is named as the other end where saddles were counted from there', () => {
    const first = all.find((question) => question.kind === 'shell' && question.position === 'M1')!
    const half = first.kind === 'shell' ? first.half : null
    expect(judgeMirror(spec, first, `half/M4/${half}`)).toBe('other-end')
    expect(judgeMirror(spec, first, `half/M2/${half}`)).toBe('elsewhere')
  })

  it('is named as the other side, the other end or both, by where the fastener lies on the engine', () => {
    const seen = new Set<string>()
    for (const question of all) {
      if (question.kind === 'shell' || question.face !== 'joint') continue
      const at = (about: string) =>
        spec.fasteners.find(({ id }) => `fastener/${id}` === about)!.at.map(inMillimetres)
      const [x, y] = at(question.key) as [number, number]
      for (const { about } of candidatesOf(spec, question)) {
        const [ox, oy] = at(about) as [number, number]
        const slip = judgeMirror(spec, question, about)
        if (about === question.key) expect(slip).toBeNull()
        if (slip === 'other-side') expect([Math.abs(ox - x) < 40, oy * y < 0]).toEqual([true, true])
        if (slip === 'other-end') expect(oy * y).toBeGreaterThan(0)
        if (slip === 'both') expect(oy * y).toBeLessThan(0)
        seen.add(slip ?? 'right')
      }
    }
    expect(seen).toEqual(new Set(['right', 'other-side', 'other-end', 'both', 'elsewhere']))
  })
})
