import { describe, expect, it } from 'vitest'
import { audit } from '../../../core/audit/index.ts'
import {
  mirrored,
  moved,
  pathOfThing,
  placed,
  placedThings,
  removed,
  renamedBearing,
  repeated,
  snapped,
  subjects,
  thingAt,
  thingsOn,
  withBead,
  withBeadPath,
  withFace,
  withOutline,
  withoutBead,
  withoutFace,
  type SpecDocument,
  type Thing,
} from '../../../core/drafts/index.ts'
import { engineSpec, readSpec } from '../../../core/engine/index.ts'
import { bareFacts, sceneOf } from '../../../core/layout/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { documentOf } from './document-of-demo.ts'

const fen = documentOf('fen-1')
const skerry = documentOf('skerry-3')
const mm = 1_000_000
const at = (x: number, y: number) => ({ x: x * mm, y: y * mm })

function good<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(outcome.problem.code)
  return outcome.value
}
const codeOf = (outcome: Outcome<unknown>) => (outcome.ok ? null : outcome.problem.code)
const readCodes = (document: SpecDocument) => {
  const read = readSpec(JSON.stringify(document))
  return read.ok ? [] : read.problems.map(({ code }) => code)
}

describe('bearings on the drawing', () => {
  const bare: SpecDocument = { ...fen, case: { ...fen.case, saddles: [], rods: [] } }

  it('are asked for by the audit where a crank runs, and by nothing elsewhere', () => {
    const codes = (document: SpecDocument) => {
      const read = engineSpec.parse({
        ...document,
        fits: [],
        endFloat: undefined,
        crank: undefined,
        steps: fen.steps.slice(0, 1),
      })
      return audit(read).map(({ problem }) => problem.code)
    }
    expect(codes(bare)).toContain('saddles-none')
    const faces = bare.case.faces.map((face) => ({ ...face, shows: 'flange' as const }))
    const flanged = codes({ ...bare, case: { ...bare.case, faces } })
    expect(flanged).not.toContain('saddles-none')
    // Without saddles there is nothing to be far outside of.
    expect(flanged).not.toContain('far-outside')
  })

  it('have the size that is typed, then that of the last one, and stand from the nose on', () => {
    expect(codeOf(placed(bare, 'joint', at(50, 0), { kind: 'saddle' }))).toBe('draft-size-unsaid')
    const size = { width: '26 mm', diameter: '62 mm' }
    const first = good(placed(bare, 'joint', at(150, 12), { kind: 'saddle', ...size })).document
    const both = good(placed(first, 'joint', at(50, 0), { kind: 'saddle' })).document
    expect(both.case.saddles).toEqual([
      { id: 'M2', at: '50 mm', ...size },
      { id: 'M1', at: '150 mm', ...size },
    ])
  })

  it('are repeated at a pitch, rods each for the next cylinder', () => {
    const rod = good(placed(bare, 'rods', at(40, 0), { kind: 'rod', width: '20 mm', diameter: '48 mm' }))
    const { document, copies } = good(repeated(rod.document, [rod.thing], 3, at(90, 0)))
    expect(copies.map(({ id }) => id)).toEqual(['B2', 'B3'])
    expect(document.case.rods?.map(({ cylinder, at: place }) => `${cylinder} ${place}`)).toEqual([
      ...['1 40 mm', '2 130 mm', '3 220 mm'],
    ])
  })

  it('move along the crank and never off it', () => {
    const { document } = { document: good(moved(fen, [{ kind: 'saddle', id: 'M1' }], at(3, 9))) }
    const before = thingsOn(fen, 'joint', subjects.bearings)[0]!.at.x
    expect(placedThings(document, [{ kind: 'saddle', id: 'M1' }])[0]!.at).toEqual({
      ...{ x: before + 3 * mm, y: 0 },
    })
  })

  it('are drawn onto saddles and edges, but not onto themselves', () => {
    const [first] = fen.case.saddles
    const x = Number.parseFloat(first!.at)
    const near = snapped(fen, 'joint', at(x + 0.4, 30), mm)
    expect(near.lines).toContainEqual({ axis: 'x', at: x * mm, of: 'saddle', name: first!.id })
    const itself = snapped(fen, 'joint', at(x + 0.4, 30), mm, new Set([`saddle/${first!.id}`]))
    expect(itself.lines.map(({ name }) => name)).not.toContain(first!.id)
  })

  it('take another name wherever they are named', () => {
    const document = renamedBearing(skerry, 'saddle', 'M2', 'main-2')
    expect(readCodes(document)).toEqual([])
    expect(JSON.stringify(document)).not.toContain('"M2"')
    expect(renamedBearing(document, 'saddle', 'main-2', 'M2')).toEqual(skerry)
  })

  it('go from fits and the crank too; one that the end float is given at stays', () => {
    const rod = good(removed(skerry, [{ kind: 'rod', id: skerry.case.rods![0]!.id }]))
    expect(readCodes(rod)).toEqual([])
    const floated = good(removed(skerry, [{ kind: 'saddle', id: skerry.endFloat!.saddle }]))
    expect(readCodes(floated)).toContain('spec-reference-dangling')
  })

  it('are found again by the place of a finding', () => {
    const thing = thingAt(skerry, 'case.saddles[1].at')!
    expect(thing).toMatchObject({ kind: 'saddle', id: skerry.case.saddles[1]!.id })
    expect(pathOfThing(skerry, thing)).toEqual(['case', 'saddles', 1])
  })
})

describe('an outline', () => {
  const square = withOutline(fen, 'cover', [at(-60, -60), at(60, -60), at(60, 60), at(-60, 60)])
  const corners = (document: SpecDocument) => document.case.faces.find(({ id }) => id === 'cover')?.outline
  const corner = (number: number): Thing => ({ kind: 'corner', id: `cover~${number}` })

  it('takes a corner into the side that is nearest to it', () => {
    const { document, thing } = good(placed(square, 'cover', at(70, 0), { kind: 'corner' }))
    expect(thing.id).toBe('cover~3')
    expect(corners(document)).toHaveLength(5)
    expect(corners(document)![2]).toEqual(['70 mm', '0 mm'])
  })

  it('has corners that move, go, and are mirrored', () => {
    expect(corners(good(moved(square, [corner(2)], at(5, 0))))![1]).toEqual(['65 mm', '-60 mm'])
    expect(corners(good(removed(square, [corner(4)])))).toHaveLength(3)
    // Two corners make no outline: it is refused as the spec that it would be.
    expect(readCodes(good(removed(square, [corner(1), corner(2)])))).toEqual(['spec-part-wrong'])
    // Without any the edge is grown again.
    expect(corners(good(removed(square, [1, 2, 3, 4].map(corner))))).toBeUndefined()
    const half = withOutline(fen, 'joint', [at(10, 5), at(20, 60), at(150, 60), at(190, 5)])
    const whole = good(
      mirrored(
        half,
        [1, 2, 3, 4].map((number) => ({ kind: 'corner', id: `joint~${number}` })),
      ),
    )
    const places = whole.document.case.faces.find(({ id }) => id === 'joint')!.outline!
    expect(places).toHaveLength(8)
    const read = readSpec(JSON.stringify(whole.document))
    if (!read.ok) throw new Error('not read')
    expect(audit(read.spec).map(({ problem }) => problem.code)).not.toContain('outline-crosses-itself')
  })
})

describe('a bead', () => {
  const typed = { name: 'Bead', width: '3 mm', sealant: 'silicone', openTimeMinutes: 10, closed: true }
  const path = [at(40, 30), at(160, 30), at(160, -30)]

  it('comes with the step that lays it, and goes with it', () => {
    const { document, bead } = good(withBead(fen, 'joint', typed, path))
    expect(readCodes(document)).toEqual([])
    expect(document.steps.at(-1)).toMatchObject({ kind: 'lay-bead', bead })
    const longer = good(withBeadPath(document, bead, [...path, at(40, -30)]))
    expect(longer.beads?.at(-1)?.path).toHaveLength(4)
    expect(withoutBead(longer, bead)).toEqual({ ok: true, value: fen })
  })

  it('lies on its face, its zones too', () => {
    expect(codeOf(withBead(fen, 'joint', typed, [...path, at(900, 0)]))).toBe('draft-off-face')
    const { document, bead } = good(withBead(fen, 'joint', typed, path))
    const zone = { kind: 'keep-out', bead, name: 'oil way' } as const
    const unsized = placed({ ...document, beads: document.beads!.slice(-1) }, 'joint', at(100, 0), zone)
    expect(codeOf(unsized)).toBe('draft-size-unsaid')
    const with1 = good(placed(document, 'joint', at(100, 0), { ...zone, size: ['9 mm', '9 mm'] }))
    const copied = good(repeated(with1.document, [with1.thing], 2, at(20, 0)))
    expect(copied.document.beads?.at(-1)?.keepOut?.map(({ at: place }) => place[0])).toEqual([
      ...['100 mm', '120 mm'],
    ])
    const { document: longer, thing } = good(
      placed(document, 'joint', at(100, 40), { kind: 'bead-point', bead }),
    )
    expect(thing.id).toBe(`${bead}~2`)
    expect(longer.beads?.at(-1)?.path[1]).toEqual(['100 mm', '40 mm'])
  })
})

describe('a face', () => {
  it('is added by its name, and goes only when nothing is on it', () => {
    const face = { name: 'Oil pump', shows: 'flange', plane: 'nose', workedFrom: 'above' } as const
    const made = withFace(fen, face)
    expect(made.face).toBe('oil-pump')
    expect(readCodes(made.document)).toEqual([])
    expect(good(withoutFace(made.document, 'oil-pump'))).toEqual(fen)
    expect(withoutFace(fen, 'joint')).toMatchObject({ problem: { code: 'draft-face-in-use' } })
  })

  it('takes a seal once it is said which way its lip points', () => {
    const seal = {
      kind: 'face-part',
      of: 'seal',
      name: 'Front seal',
      diameter: '52 mm',
      shaft: '38 mm',
    } as const
    expect(codeOf(placed(fen, 'cover', at(0, 0), seal))).toBe('draft-way-unsaid')
    const { document } = good(placed(fen, 'cover', at(0, 0), { ...seal, way: 'inwards' }))
    expect(readCodes(document)).toEqual([])
    expect(document.case.faceParts?.at(-1)).toMatchObject({ kind: 'seal', lip: 'inwards' })
    const plug = { kind: 'face-part', of: 'plug', name: 'Plug' } as const
    expect(codeOf(placed(fen, 'cover', at(10, 0), plug))).toBe('draft-size-unsaid')
  })
})

describe('a case without saddles', () => {
  it('can be drawn on each of its faces', () => {
    const faces = fen.case.faces.map(({ gasket: _, ...face }) => face)
    const steps = [{ id: 'look', kind: 'check', name: 'Look', instruction: 'Look it over.' }] as const
    const bare = {
      ...fen,
      ...{ fits: [], parts: [], cautions: [], beads: [], steps },
      ...{ endFloat: undefined, crank: undefined },
      case: { ...fen.case, faces, saddles: [], rods: [] },
    }
    const read = readSpec(JSON.stringify(bare))
    if (!read.ok) throw new Error(read.problems[0]!.code)
    const sheet = { widthPx: 800, heightPx: 600, capitalPx: 12 }
    for (const { id, workedFrom } of read.spec.case.faces) {
      const { shapes } = sceneOf(en, read.spec, bareFacts(id), { from: workedFrom, turn: 0 }, sheet)
      expect(
        shapes.some(({ about }) => about === `face/${id}`),
        id,
      ).toBe(true)
    }
  })
})
