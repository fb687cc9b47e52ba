import { degrees, newtonMetres } from '../quantity/index.ts'
import type { Pass, PassStep } from './pass.ts'

interface PassesInSteps {
  readonly passes: Pass[]
  /** Passes, counted from 0, whose value no equal steps of that size come to. */
  readonly unreached: readonly { readonly pass: number; readonly why: NoSteps }[]
}

type NoSteps = 'steps-do-not-come-out' | 'steps-from-unlike'

/** So much is left to values that are printed rounded: three steps of 33.3 come to 100. */
const slack = 2e-3
/** More are no procedure that anybody prints. */
const mostSteps = 20

/**
 * Writes each pass in steps as so many passes: the fewest equal steps of the size that the spec gives, counted from the torque
 * that the fasteners had before. Limits in between are what so many steps may come to; those of an angle are shared out, so
 * that all of them together keep to the whole angle's.
 */
export function inSteps({
  orders,
  passes,
}: {
  readonly orders: readonly { readonly id: string; readonly sequence: readonly string[] }[]
  readonly passes: readonly Pass[]
}): PassesInSteps {
  const torque = new Map<string, number>()
  const made: Pass[] = []
  const unreached: { pass: number; why: NoSteps }[] = []
  passes.forEach((pass, index) => {
    const sequence =
      pass.kind === 'action' ? [] : (orders.find(({ id }) => id === pass.order)?.sequence ?? [])
    const steps = stepsOf(pass, sequence, torque)
    if (typeof steps === 'string') unreached.push({ pass: index, why: steps })
    made.push(...(typeof steps === 'string' ? [pass] : steps))
    if (pass.kind === 'loosen') for (const id of sequence) torque.delete(id)
    if (pass.kind === 'torque') for (const id of sequence) torque.set(id, ownValue(pass, id).target)
  })
  return { passes: made, unreached }
}

function stepsOf(
  pass: Pass,
  sequence: readonly string[],
  torque: ReadonlyMap<string, number>,
): readonly Pass[] | NoSteps {
  if ((pass.kind !== 'torque' && pass.kind !== 'angle') || pass.inSteps === undefined) return [pass]
  const { least, most } = pass.inSteps
  const others = pass.others ?? []
  const groups = [
    { target: pass.target, ids: sequence.filter((id) => ownValue(pass, id) === pass) },
    ...others.map(({ target, fasteners }) => ({ target, ids: fasteners })),
  ].filter(({ ids }, index) => index === 0 || ids.length > 0)
  const from: number[] = []
  for (const { ids } of groups) {
    const before = new Set(pass.kind === 'angle' ? [0] : ids.map((id) => torque.get(id) ?? 0))
    if (before.size > 1) return 'steps-from-unlike'
    from.push([...before][0] ?? 0)
  }
  const way = groups.map(({ target }, index) => target - (from[index] ?? 0))
  const of = Math.ceil(Math.max(...way) / (most * (1 + slack)))
  if (of > mostSteps || way.some((each) => each / of < least * (1 - slack))) return 'steps-do-not-come-out'
  return Array.from({ length: of }, (_, index) => {
    const step = { number: index + 1, of }
    return pass.kind === 'torque'
      ? { ...torqueStep(pass, from, step), step }
      : { ...angleStep(pass, step), step }
  })
}

type PassOf<Kind extends Pass['kind']> = Extract<Pass, { kind: Kind }>

function torqueStep(
  pass: PassOf<'torque'>,
  from: readonly number[],
  { number, of }: PassStep,
): PassOf<'torque'> {
  if (number === of) return pass
  const size = pass.inSteps
  const at = <Value extends { target: number }>(value: Value, start = 0) => ({
    ...value,
    target: newtonMetres(start + ((value.target - start) * number) / of),
    least: size && size.least < size.most ? newtonMetres(start + number * size.least) : undefined,
    most: size && size.least < size.most ? newtonMetres(start + number * size.most) : undefined,
  })
  const others = pass.others.map((other, index) => at(other, from[index + 1]))
  return { ...at(pass, from[0]), others }
}

function angleStep(pass: PassOf<'angle'>, { of }: PassStep): PassOf<'angle'> {
  const shared = <Value extends { target: number; least?: number | undefined; most?: number | undefined }>(
    value: Value,
  ) => ({
    ...value,
    target: degrees(value.target / of),
    ...(value.least !== undefined && { least: degrees(value.least / of) }),
    ...(value.most !== undefined && { most: degrees(value.most / of) }),
  })
  return { ...shared(pass), others: pass.others?.map(shared) }
}

/** The value that a pass has for a fastener: its own, where it has one. */
function ownValue(pass: PassOf<'torque'> | PassOf<'angle'>, fastener: string): { readonly target: number } {
  const own: readonly { readonly target: number; readonly fasteners: readonly string[] }[] = pass.others ?? []
  return own.find(({ fasteners }) => fasteners.includes(fastener)) ?? pass
}

/** Where a pass, counted from 0 as it is carried out, stands in the spec: the steps of one pass are written once. */
export function writtenAt(passes: readonly Pass[], index: number): number {
  return index - passes.slice(0, index + 1).filter(({ step }) => step !== undefined && step.number > 1).length
}
