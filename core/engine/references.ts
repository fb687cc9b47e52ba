import { problem, type Facts, type Problem } from '../problem/index.ts'
import type { Procedure } from './fastening.ts'
import { writtenAt } from './in-steps.ts'
import type { Fit } from './fit.ts'
import { pathText, placeInFile } from './place.ts'
import type { EngineSpec } from './schema.ts'
import { isPlacedStep, type Step } from './step.ts'

type NamedPart = Facts<'spec-reference-dangling'>['what']
type Path = readonly (string | number)[]

/** One part of a spec naming another: where it stands, what it must be the id of, and the ids there are. */
interface Reference {
  readonly path: Path
  readonly id: string
  readonly what: NamedPart
  readonly known: ReadonlySet<string>
}

/** References to what is not there: nothing can be computed from a spec that has them. */
export function danglingReferences(spec: EngineSpec): readonly Problem[] {
  return references(spec)
    .filter(({ id, known }) => !known.has(id))
    .map(({ path, what, id }) =>
      problem('spec-reference-dangling', { place: placeInFile(spec, path), what, id }, pathText(path)),
    )
}

type ReferenceFinder = (path: Path, id: string | undefined) => readonly Reference[]

function to(what: NamedPart, list: readonly { readonly id: string }[]): ReferenceFinder {
  const known = new Set(list.map(({ id }) => id))
  return (path, id) => (id === undefined ? [] : [{ path, id, what, known }])
}

function each(refer: ReferenceFinder, path: Path, ids: readonly string[] = []): readonly Reference[] {
  return ids.flatMap((id, index) => refer([...path, index], id))
}

function references(spec: EngineSpec): readonly Reference[] {
  const face = to('face', spec.case.faces)
  const group = to('fastener-group', spec.fastenerGroups)
  const fastener = to('fastener', spec.fasteners)
  const saddle = to('saddle', spec.case.saddles)
  return [
    ...spec.case.dowels.flatMap((dowel, i) => face(['case', 'dowels', i, 'face'], dowel.face)),
    ...spec.case.oilPassages.flatMap((passage, i) => face(['case', 'oilPassages', i, 'face'], passage.face)),
    ...spec.case.faceParts.flatMap((part, i) => face(['case', 'faceParts', i, 'face'], part.face)),
    ...spec.case.faces.flatMap(({ gasket }, i) =>
      to('part', spec.parts)(['case', 'faces', i, 'gasket', 'part'], gasket?.part),
    ),
    ...ofCrank(spec),
    ...spec.fits.flatMap((fit, i) => ofFit(spec, fit, ['fits', i])),
    ...saddle(['endFloat', 'saddle'], spec.endFloat?.saddle),
    ...spec.fasteners.flatMap((one, i) => [
      ...group(['fasteners', i, 'group'], one.group),
      ...face(['fasteners', i, 'face'], one.face),
    ]),
    ...spec.procedures.flatMap((procedure, i) => [
      ...face(['procedures', i, 'face'], procedure.face),
      ...ofProcedure(fastener, procedure, ['procedures', i]),
    ]),
    ...spec.beads.flatMap((bead, i) => face(['beads', i, 'face'], bead.face)),
    ...spec.parts.flatMap(({ usedIn }, i) =>
      usedIn.flatMap((use, k) => to('step', spec.steps)(['parts', i, 'usedIn', k, 'step'], use.step)),
    ),
    ...ofSteps(spec),
    ...spec.cautions.flatMap(({ steps }, i) => each(to('step', spec.steps), ['cautions', i, 'steps'], steps)),
  ]
}

function ofCrank({ crank, case: { rods } }: EngineSpec): readonly Reference[] {
  if (crank === undefined) return []
  return [
    ...crank.throws.flatMap((one, i) => each(to('rod', rods), ['crank', 'throws', i, 'rods'], one.rods)),
    ...crank.counterweights.flatMap((one, i) =>
      to('throw', crank.throws)(['crank', 'counterweights', i, 'throw'], one.throw),
    ),
  ]
}

function ofFit(spec: EngineSpec, fit: Fit, path: Path): readonly Reference[] {
  const bearing = {
    main: to('saddle', spec.case.saddles),
    'big-end': to('rod', spec.case.rods),
    balance: to('balance-bearing', spec.case.balanceBearings),
  }[fit.kind]
  const position = to(
    'position',
    fit.positions.map((id) => ({ id })),
  )
  return [
    ...each(bearing, [...path, 'positions'], fit.positions),
    ...(fit.chart ?? []).flatMap((cell, i) =>
      each(position, [...path, 'chart', i, 'positions'], cell.positions),
    ),
  ]
}

function ofProcedure(fastener: ReferenceFinder, procedure: Procedure, path: Path): readonly Reference[] {
  const order = to('order', procedure.orders)
  return [
    ...procedure.orders.flatMap((one, i) => each(fastener, [...path, 'orders', i, 'sequence'], one.sequence)),
    ...procedure.passes.flatMap((pass, k) => {
      // The steps of one pass are written once.
      if (pass.kind === 'action' || (pass.step?.number ?? 1) > 1) return []
      const i = writtenAt(procedure.passes, k)
      const others = 'others' in pass ? (pass.others ?? []) : []
      const only = pass.kind === 'recheck' ? (pass.only ?? []) : []
      return [
        ...each(fastener, [...path, 'passes', i, 'only'], only),
        ...order([...path, 'passes', i, 'order'], pass.order),
        ...others.flatMap((other, k) =>
          each(fastener, [...path, 'passes', i, 'others', k, 'fasteners'], other.fasteners),
        ),
      ]
    }),
  ]
}

function ofSteps(spec: EngineSpec): readonly Reference[] {
  const refer = {
    step: to('step', spec.steps),
    fit: to('fit', spec.fits),
    procedure: to('procedure', spec.procedures),
    bead: to('bead', spec.beads),
    face: to('face', spec.case.faces),
    part: to('part', spec.parts),
    rings: to('ring-set', spec.ringSets),
  }
  const named = (step: Step, path: Path): readonly Reference[] => {
    switch (step.kind) {
      case 'note-marks':
      case 'choose-shells':
      case 'fit-shells':
        return refer.fit([...path, 'fit'], step.fit)
      case 'fit-part':
      case 'check':
      case 'measure-limits':
      case 'lubricate':
      case 'clean':
      case 'orient':
      case 'align':
      case 'fit-places':
      case 'note':
      case 'turn':
        return refer.face([...path, 'face'], step.face)
      case 'photo':
        return [...refer.face([...path, 'face'], step.face), ...refer.part([...path, 'part'], step.part)]
      case 'measure-rings':
      case 'fit-rings':
        return [...refer.face([...path, 'face'], step.face), ...refer.rings([...path, 'rings'], step.rings)]
      case 'lay-bead':
        return refer.bead([...path, 'bead'], step.bead)
      case 'run-procedure':
        return refer.procedure([...path, 'procedure'], step.procedure)
      case 'count':
        return []
      default:
        return step satisfies never
    }
  }
  return spec.steps.flatMap((step, i) => [
    ...each(refer.step, ['steps', i, 'after'], step.after),
    ...named(step, ['steps', i]),
    ...(isPlacedStep(step) ? step.places : []).flatMap(({ facePart }, k) =>
      to('face-part', spec.case.faceParts)(['steps', i, 'places', k, 'facePart'], facePart),
    ),
  ])
}
