import type { SpecDocument } from '../../engine/index.ts'
import { printedValue } from './printed-value.ts'

export type PassInDocument = SpecDocument['procedures'][number]['passes'][number]

/** A pass by what it is called in a manual: an angle is counted from the pass before, or in all since the last torque. */
export const passChoices = [
  'seat',
  'torque',
  'angle',
  'in-all',
  'loosen',
  'recheck',
  'length',
  'stretch',
  'tighten-to-stretch',
  'action',
] as const
export type PassChoice = (typeof passChoices)[number]

export type PassNeed = 'value' | 'least' | 'most' | 'torqueLeast' | 'torqueMost' | 'instruction'

/** What is typed from the manual before there is a pass: none of it is made up. */
export const passNeeds: Readonly<Record<PassChoice, readonly PassNeed[]>> = {
  seat: [],
  loosen: [],
  length: [],
  torque: ['value'],
  recheck: ['value'],
  angle: ['value'],
  'in-all': ['value'],
  stretch: ['least', 'most'],
  'tighten-to-stretch': ['least', 'most', 'torqueLeast', 'torqueMost'],
  action: ['instruction'],
}

/** As it is typed; a value may have its limits with it, `30 ± 3 lbf·ft`. */
export type TypedPass = Readonly<Partial<Record<PassNeed, string>>>

export function choiceOf(pass: PassInDocument): PassChoice {
  return pass.kind === 'angle' && pass.inAll !== undefined ? 'in-all' : pass.kind
}

/** A pass of what was typed; null while something that it needs is not typed. */
export function newPass(choice: PassChoice, order: string, typed: TypedPass): PassInDocument | null {
  const given = (need: PassNeed) => typed[need]?.trim() ?? ''
  if (passNeeds[choice].some((need) => given(need) === '')) return null
  const limits = { least: given('least'), most: given('most') }
  switch (choice) {
    case 'seat':
    case 'loosen':
    case 'length':
      return { kind: choice, order }
    case 'torque':
    case 'recheck':
    case 'angle':
      return { kind: choice, order, ...printedValue(given('value')) }
    case 'in-all': {
      const { target, ...within } = printedValue(given('value'))
      return { kind: 'angle', order, ...(target !== undefined && { inAll: target }), ...within }
    }
    case 'stretch':
      return { kind: choice, order, ...limits }
    case 'tighten-to-stretch':
      return {
        ...{ kind: choice, order, ...limits },
        torque: { least: given('torqueLeast'), most: given('torqueMost') },
      }
    case 'action':
      return { kind: choice, instruction: given('instruction') }
    default:
      return choice satisfies never
  }
}

/** What a pass has of what another kind needs: torque stays torque, an angle an angle, a stretch a stretch. */
function typedOf(pass: PassInDocument, choice: PassChoice): TypedPass {
  const isTorque = choice === 'torque' || choice === 'recheck'
  switch (pass.kind) {
    case 'torque':
    case 'recheck':
      return isTorque && pass.target !== undefined ? { value: pass.target } : {}
    case 'angle': {
      const angle = pass.inAll ?? pass.target
      const isAngle = choice === 'angle' || choice === 'in-all'
      return isAngle && angle !== undefined ? { value: angle } : {}
    }
    case 'stretch':
    case 'tighten-to-stretch':
      return { least: pass.least, most: pass.most }
    default:
      return {}
  }
}

/** The same pass as another kind, with what both have; null where the other needs what this one has not. */
export function passAs(pass: PassInDocument, choice: PassChoice, order: string): PassInDocument | null {
  const fresh = newPass(choice, 'order' in pass ? pass.order : order, typedOf(pass, choice))
  return fresh === null ? null : withRestOf(pass, fresh)
}

/** What a pass has beside its value goes over to the one that takes its place. */
export function withRestOf(pass: PassInDocument, fresh: PassInDocument): PassInDocument {
  const both = (one: PassInDocument['kind'], other: PassInDocument['kind']) =>
    (pass.kind === one || pass.kind === other) && (fresh.kind === one || fresh.kind === other)
  if (both('torque', 'recheck')) {
    const { inSteps: _, target: __, ...kept } = pass as Extract<PassInDocument, { kind: 'torque' }>
    return { ...kept, ...fresh } as PassInDocument
  }
  const note = 'note' in pass ? pass.note : undefined
  return note === undefined || fresh.kind === 'action' ? fresh : { ...fresh, note }
}
