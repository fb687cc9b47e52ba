import { problem, type Facts, type Problem } from '../problem/index.ts'
import type { Fit } from './fit.ts'
import type { EngineSpec } from './schema.ts'

type RepeatedId = Facts<'spec-id-twice'>

/** A list whose entries are told apart by their ids, with what one of them is and what has the list. */
interface NamedList {
  readonly what: RepeatedId['what']
  readonly of?: RepeatedId['of']
  readonly path: string
  readonly ids: readonly string[]
}

/** Ids, marks and grades that are there twice: a reference to one of them could mean either. */
export function repeatedIds(spec: EngineSpec): readonly Problem[] {
  return namedLists(spec).flatMap(({ what, of = null, path, ids }) => {
    const seen = new Set<string>()
    const repeated = new Set(ids.filter((id) => seen.size === seen.add(id).size))
    return [...repeated].map((id) => problem('spec-id-twice', { what, of, id }, path))
  })
}

function namedLists(spec: EngineSpec): readonly NamedList[] {
  // A build keeps the shells of all bearings by position, whatever kind of bearing it is.
  const bearings = [...spec.case.saddles, ...spec.case.rods, ...spec.case.balanceBearings]
  return [
    byId('bearing', 'case', bearings),
    byId('face', 'case.faces', spec.case.faces),
    byId('dowel', 'case.dowels', spec.case.dowels),
    byId('oil-passage', 'case.oilPassages', spec.case.oilPassages),
    byId('face-part', 'case.faceParts', spec.case.faceParts),
    byId('throw', 'crank.throws', spec.crank?.throws ?? []),
    byId('wheel', 'crank.wheels', spec.crank?.wheels ?? []),
    byId('fit', 'fits', spec.fits),
    byId('fastener-group', 'fastenerGroups', spec.fastenerGroups),
    byId('fastener', 'fasteners', spec.fasteners),
    byId('procedure', 'procedures', spec.procedures),
    byId('bead', 'beads', spec.beads),
    byId('part', 'parts', spec.parts),
    byId('ring-set', 'ringSets', spec.ringSets),
    byId('step', 'steps', spec.steps),
    ...spec.procedures.map(({ id, orders }, index) => ({
      ...byId('order', `procedures[${index}].orders`, orders),
      of: { what: 'procedure' as const, id },
    })),
    ...spec.ringSets.map(({ id, rings }, index) => ({
      ...byId('ring', `ringSets[${index}].rings`, rings),
      of: { what: 'ring-set' as const, id },
    })),
    ...spec.fits.flatMap((fit, index) => listsOfFit(fit, `fits[${index}]`)),
  ]
}

function byId(what: RepeatedId['what'], path: string, list: readonly { readonly id: string }[]): NamedList {
  return { what, path, ids: list.map(({ id }) => id) }
}

function listsOfFit(fit: Fit, path: string): readonly NamedList[] {
  const of = { what: 'fit', id: fit.id } as const
  const marks = (part: 'housing' | 'journal'): NamedList => ({
    what: `${part}-mark`,
    of,
    path: `${path}.${part}.marks`,
    ids: fit[part].marks.map(({ mark }) => mark),
  })
  return [
    { what: 'position', of, path: `${path}.positions`, ids: fit.positions },
    marks('housing'),
    marks('journal'),
    { what: 'grade', of, path: `${path}.grades`, ids: fit.grades.map(({ grade }) => grade) },
  ]
}
