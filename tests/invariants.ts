import { replay, type BuildEvent, type RecordedEvent } from '../core/builds/index.ts'
import type { EngineSpec } from '../core/engine/index.ts'
import { plannedPulls } from '../core/tightening/index.ts'

type EventOf<Type extends BuildEvent['type']> = Extract<BuildEvent, { type: Type }>
type Pulled = EventOf<'fastener-pulled'>

/**
 * What must hold of every build that is taken for a good one, however its entries came about: no pull is made twice, no
 * fastener misses a pass, nothing is finished with an open flag, and nothing follows the end. Every breach as a sentence.
 * Told from the entries alone, without the rules by which the program decides.
 */
export function breachesOf(spec: EngineSpec, entries: readonly RecordedEvent[]): readonly string[] {
  const breaches: string[] = []
  const procedures = new Map(spec.procedures.map((procedure) => [procedure.id, procedure]))
  /** By procedure: the pulls that count. */
  const live = new Map<string, readonly Pulled[]>()
  const keep = (procedure: string, which: (pull: Pulled) => boolean): void =>
    void live.set(procedure, (live.get(procedure) ?? []).filter(which))
  let ended: string | null = null

  for (const { seq, event } of entries) {
    if (ended !== null && event.type !== 'build-amended' && event.type !== 'build-voided')
      breaches.push(`entry ${seq} comes after the build was ${ended}`)
    switch (event.type) {
      case 'fastener-pulled': {
        const { procedure: id, pass, fastener } = event
        const before = live.get(id) ?? []
        const procedure = procedures.get(id)
        const same = before.filter((pull) => pull.pass === pass && pull.fastener === fastener)
        // What came short may be pulled on; a pull that reached its value may not.
        if (same.some(({ verdict }) => verdict !== 'under'))
          breaches.push(`entry ${seq} pulls ${fastener} twice in pass ${pass + 1}`)
        const missed = (procedure === undefined ? [] : plannedPulls(procedure)).find(
          (planned) =>
            fastener !== null &&
            planned.fastener === fastener &&
            planned.pass < pass &&
            !before.some((pull) => pull.fastener === fastener && pull.pass === planned.pass),
        )
        if (missed !== undefined)
          breaches.push(
            `entry ${seq} pulls ${fastener} in pass ${pass + 1}, and ${missed.pass + 1} is missed`,
          )
        live.set(id, [...before, event])
        break
      }
      case 'pull-taken-back':
        keep(event.procedure, ({ pull }) => pull !== event.pull)
        break
      case 'fastener-loosened':
        keep(event.procedure, ({ fastener }) => fastener !== event.fastener)
        break
      case 'pass-repeated':
        keep(event.procedure, ({ pass }) => pass !== event.pass)
        break
      case 'run-restarted':
        keep(event.procedure, ({ pass }) => pass < event.pass)
        break
      case 'build-finished': {
        const { runs } = replay(entries.filter((each) => each.seq <= seq))
        for (const step of spec.steps) {
          if (step.kind !== 'run-procedure') continue
          const run = runs[step.procedure]
          const open = run?.flags.filter(({ answer }) => answer === null) ?? []
          if (open.length > 0) breaches.push(`finished with a flag open in ${step.procedure}`)
          const made = live.get(step.procedure) ?? []
          const procedure = procedures.get(step.procedure)
          const left = (procedure === undefined ? [] : plannedPulls(procedure)).filter(
            ({ pass, fastener }) => !made.some((pull) => pull.pass === pass && pull.fastener === fastener),
          )
          if (left.length > 0)
            breaches.push(`finished with ${left.length} pulls missing in ${step.procedure}`)
        }
        ended = 'finished'
        break
      }
      case 'build-voided':
        if (ended === 'voided') breaches.push(`entry ${seq} voids it again`)
        ended = 'voided'
        break
      default:
        break
    }
  }
  return breaches
}
