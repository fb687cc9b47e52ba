import type { SpecDocument } from '../../engine/index.ts'

type DocumentStep = SpecDocument['steps'][number]
type StepOfKind<Kind extends DocumentStep['kind']> = Extract<DocumentStep, { kind: Kind }>

/**
 * All that a spec says of a step which its outcome rests on, beside the steps under it; null where it has no such step. Left out
 * is what it is only called, and what is asked for at any time: when it may be begun or skipped, who looks at it.
 */
export function groundsOf(document: SpecDocument, id: string): unknown {
  const step = document.steps.find((each) => each.id === id)
  if (step === undefined) return null
  const { after: _, name: __, dangers: ___, secondPerson: ____, mayBeSkipped: _____, ...own } = step
  const parts = document.parts ?? []
  const usedHere = parts.filter(({ usedIn }) => usedIn.some((use) => use.step === id))
  return [own, usedHere.map(withoutName), thingsOf(document, step)]
}

function thingsOf(document: SpecDocument, step: DocumentStep): unknown {
  switch (step.kind) {
    case 'note-marks':
      return marksRead(document, step)
    case 'choose-shells':
    case 'fit-shells':
      return bearings(document, step.fit)
    case 'run-procedure':
      return groundsOfRun(document, step)
    case 'lay-bead':
      return joint(document, step)
    case 'measure-rings':
    case 'fit-rings':
      return named(document.ringSets, step.rings)
    case 'count':
      return (document.parts ?? []).map(withoutName)
    case 'photo':
      return named(document.parts, step.part)
    case 'check':
      return step.gap === 'end-float'
        ? document.endFloat
        : step.gap === 'rod-side'
          ? document.rodSideClearance
          : null
    case 'fit-part':
    case 'measure-limits':
    case 'lubricate':
    case 'clean':
    case 'orient':
    case 'align':
    case 'fit-places':
    case 'note':
    case 'turn':
      return null
    default:
      return step satisfies never
  }
}

/** Which marks there are, and where they are read. What they stand for is no matter of reading them. */
function marksRead({ fits }: SpecDocument, { fit: id, part }: StepOfKind<'note-marks'>): unknown {
  const fit = fits.find((each) => each.id === id)
  return fit && [fit.positions, fit[part].readAt, fit[part].marks.map(({ mark }) => mark)]
}

function bearings(document: SpecDocument, id: string): unknown {
  const fit = document.fits.find((each) => each.id === id)
  const { saddles, rods = [], balanceBearings = [] } = document.case
  const places = [...saddles, ...rods, ...balanceBearings]
  return fit && [withoutName(fit), places.filter((place) => fit.positions.includes(place.id))]
}

function groundsOfRun(document: SpecDocument, step: StepOfKind<'run-procedure'>): unknown {
  const procedure = document.procedures.find(({ id }) => id === step.procedure)
  if (procedure === undefined) return null
  const ids = new Set(procedure.orders.flatMap(({ sequence }) => sequence))
  const fasteners = document.fasteners.filter(({ id }) => ids.has(id))
  const groups = document.fastenerGroups.filter(({ id }) => fasteners.some(({ group }) => group === id))
  const { saddles, rods, faces } = document.case
  return [
    withoutName(procedure),
    fasteners.map(({ where: _, ...fastener }) => fastener),
    groups.map(withoutName),
    faces.find(({ id }) => id === procedure.face)?.gasket,
    procedure.capByCap === true ? [saddles, rods] : null,
  ]
}

function joint(document: SpecDocument, step: StepOfKind<'lay-bead'>): unknown {
  const bead = document.beads?.find(({ id }) => id === step.bead)
  if (bead === undefined) return null
  const { faces, dowels = [], oilPassages = [], faceParts = [] } = document.case
  const inFace = <Thing extends { readonly face: string }>(things: readonly Thing[]) =>
    things.filter(({ face }) => face === bead.face)
  const face = faces.find(({ id }) => id === bead.face)
  return [
    withoutName(bead),
    face && withoutName(face),
    inFace(dowels),
    inFace(oilPassages),
    inFace(faceParts),
  ]
}

function named(things: readonly { readonly id: string }[] | undefined, id: string | undefined): unknown {
  const thing = things?.find((each) => each.id === id)
  return thing && withoutName(thing)
}

function withoutName(thing: object): object {
  return Object.fromEntries(Object.entries(thing).filter(([key]) => key !== 'name'))
}
