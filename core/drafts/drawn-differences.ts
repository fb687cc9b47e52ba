import type { SpecDocument } from '../engine/index.ts'
import { isSame } from './changes.ts'
import type { Phrase } from '../problem/index.ts'
import { called } from './placing/things.ts'
import { listOf } from './placing/listed.ts'
import { aboutOf, subjects } from './placing/thing.ts'

/** One thing that the drawing of a face has otherwise in two specs. */
export interface DrawnDifference {
  readonly face: string
  /** As a drawing names it: `fastener/C4`. */
  readonly about: string
  /** What it is called; null for the outline of the face. */
  readonly thing: Phrase | null
  readonly how: 'added' | 'gone' | 'moved' | 'changed'
}

interface DrawnPart {
  readonly about: string
  readonly thing: Phrase | null
  readonly faces: readonly string[]
  readonly place: unknown
  /** All that is said of it, its place too. */
  readonly whole: unknown
}

/** What differs on the drawings of two specs, thing by thing; one that went to another face is gone here and new there. */
export function drawnDifferences(before: SpecDocument, after: SpecDocument): readonly DrawnDifference[] {
  const [old, fresh] = [drawnIn(before), drawnIn(after)]
  return [...new Set([...old.keys(), ...fresh.keys()])].flatMap((about) => {
    const [was, is] = [old.get(about), fresh.get(about)]
    const on = (faces: readonly string[] = [], how: DrawnDifference['how']) =>
      faces.map((face) => ({ face, about, thing: (is ?? was)?.thing ?? null, how }))
    const stays = was?.faces.filter((face) => is?.faces.includes(face)) ?? []
    return [
      ...on(
        was?.faces.filter((face) => !stays.includes(face)),
        'gone',
      ),
      ...on(
        is?.faces.filter((face) => !stays.includes(face)),
        'added',
      ),
      ...(was === undefined || is === undefined || isSame(was.whole as never, is.whole as never)
        ? []
        : on(stays, isSame(was.place as never, is.place as never) ? 'changed' : 'moved')),
    ]
  })
}

function drawnIn(document: SpecDocument): ReadonlyMap<string, DrawnPart> {
  const { saddles, rods = [], balanceBearings = [], faces } = document.case
  const facesThatShow = (what: (typeof faces)[number]['shows']) =>
    faces.filter(({ shows }) => shows === what).map(({ id }) => id)
  const bearings = [
    { places: saddles, shows: 'saddles' },
    { places: rods, shows: 'rods' },
    { places: balanceBearings, shows: 'balance' },
  ] as const
  const drawn: readonly DrawnPart[] = [
    ...subjects.parts.flatMap((kind) =>
      listOf(document, kind).map((each) => ({
        about: aboutOf({ kind, id: each.id }),
        thing: called(document, { kind, id: each.id }),
        faces: [each.face],
        place: [...each.at],
        whole: each,
      })),
    ),
    ...bearings.flatMap(({ places, shows }) =>
      places.map((each) => ({
        about: `half/${each.id}/upper`,
        thing: namedSo(each.id),
        faces: facesThatShow(shows),
        place: each.at,
        whole: each,
      })),
    ),
    ...(document.beads ?? []).map(({ name: _, ...bead }) => ({
      about: `bead/${bead.id}`,
      thing: namedSo(bead.id),
      faces: [bead.face],
      place: bead.path,
      whole: bead,
    })),
    ...faces.map((face) => ({
      about: `face/${face.id}`,
      thing: null,
      faces: [face.id],
      place: face.outline ?? null,
      whole: [face.outline ?? null, face.gasket ?? null],
    })),
  ]
  return new Map(drawn.map((each) => [each.about, each]))
}

function namedSo(name: string): Phrase {
  return { code: 'passageCalled', facts: { name } }
}
