import type { SpecDocument } from '../../engine/index.ts'
import { nextId } from '../placing/index.ts'
import { printedValue } from '../forms/index.ts'
import { namesIn } from './names-typed.ts'

export type StepInDocument = SpecDocument['steps'][number]
type Kind = StepInDocument['kind']

/** In the order in which a bottom end goes together, as far as there is one. */
export const stepKinds = [
  'clean',
  'note-marks',
  'choose-shells',
  'fit-shells',
  'measure-limits',
  'measure-rings',
  'fit-rings',
  'fit-part',
  'fit-places',
  'orient',
  'align',
  'lubricate',
  'lay-bead',
  'run-procedure',
  'turn',
  'check',
  'note',
  'photo',
  'count',
] as const satisfies readonly Kind[]

/** What is said before there is such a step: none of it is made up. */
export type StepNeed =
  | 'fit'
  | 'part'
  | 'bead'
  | 'procedure'
  | 'rings'
  | 'instruction'
  | 'at'
  | 'say'
  | 'where'
  | 'limits'

const byPlace = ['at', 'say'] as const
export const stepNeeds: Readonly<Record<Kind, readonly StepNeed[]>> = {
  'note-marks': ['fit', 'part'],
  'choose-shells': ['fit'],
  'fit-shells': ['fit'],
  'fit-part': ['instruction'],
  'lay-bead': ['bead'],
  'run-procedure': ['procedure'],
  'measure-limits': ['at', 'where', 'limits'],
  'measure-rings': ['rings'],
  'fit-rings': ['rings'],
  lubricate: byPlace,
  clean: byPlace,
  orient: byPlace,
  align: byPlace,
  'fit-places': byPlace,
  note: byPlace,
  photo: ['instruction'],
  turn: ['instruction'],
  count: [],
  check: ['instruction'],
}

/** As it is chosen and typed. */
export type TypedStep = Readonly<Partial<Record<StepNeed | 'name', string>>>

/** What a need can be chosen from, by id; null for one that is typed. */
export function choicesFor(document: SpecDocument, need: StepNeed): readonly string[] | null {
  const ids = (list: readonly { readonly id: string }[] = []) => list.map(({ id }) => id)
  switch (need) {
    case 'fit':
      return ids(document.fits)
    case 'part':
      return ['housing', 'journal']
    case 'bead':
      return ids(document.beads)
    case 'procedure':
      return ids(document.procedures)
    case 'rings':
      return ids(document.ringSets)
    default:
      return null
  }
}

/** A step of what was said of it; null while something that it needs is not said. It waits for no other yet. */
export function newStep(document: SpecDocument, kind: Kind, typed: TypedStep): StepInDocument | null {
  const given = (need: StepNeed | 'name') => typed[need]?.trim() ?? ''
  if (given('name') === '' || stepNeeds[kind].some((need) => given(need) === '')) return null
  const taken = new Set(document.steps.map(({ id }) => id))
  const common = { id: nextId(taken, 'step-0'), name: given('name') }
  const places = [{ id: 'place-1', at: given('at'), say: given('say') }]
  switch (kind) {
    case 'note-marks':
      return {
        ...common,
        kind,
        fit: given('fit'),
        part: given('part') === 'housing' ? 'housing' : 'journal',
      }
    case 'choose-shells':
    case 'fit-shells':
      return { ...common, kind, fit: given('fit') }
    case 'lay-bead':
      return { ...common, kind, bead: given('bead') }
    case 'run-procedure':
      return { ...common, kind, procedure: given('procedure') }
    case 'measure-rings':
    case 'fit-rings':
      return { ...common, kind, rings: given('rings') }
    case 'lubricate':
    case 'clean':
    case 'orient':
    case 'align':
    case 'fit-places':
    case 'note':
      return { ...common, kind, places }
    case 'fit-part':
    case 'photo':
    case 'turn':
    case 'check':
      return { ...common, kind, instruction: given('instruction') }
    case 'measure-limits': {
      const measure = { id: 'measure-1', name: given('name'), what: 'other' as const }
      const { least, most, target } = printedValue(given('limits'))
      const limits = least === undefined ? { most: target } : { least, most }
      const at = [...namesIn(given('at'))]
      return { ...common, kind, measures: [{ ...measure, at, where: given('where'), new: limits }] }
    }
    case 'count':
      return { ...common, kind }
    default:
      return kind satisfies never
  }
}
