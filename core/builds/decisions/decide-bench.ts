import { done, problem, refused, type Problem } from '../../problem/index.ts'
import { readReason } from '../../tightening/index.ts'
import type { BenchName } from '../events/bench-events.ts'
import type { BuildState } from '../events/state.ts'
import type { CommandOf, Events } from '../commands/step-rules.ts'

type BenchCommand = CommandOf<'hand-over' | 'take-over' | 'settle-fork'>

/** Why this bench may add nothing to the build: another one has it. Null where it may, and where benches are not told apart. */
export function builtElsewhere(state: BuildState, here: BenchName | null): Problem | null {
  const { bench, started, finished, voided } = state
  if (bench === null || here === null || bench.id === here.id) return null
  const is = voided ? 'voided' : finished ? 'finished' : 'open'
  return problem('build-elsewhere', { name: started?.name ?? '', bench: bench.name, is })
}

/** Refuses to hand a build to the bench that has it, to take over what is here, and both without benches. */
export function decideBench(state: BuildState, command: BenchCommand, here: BenchName | null): Events {
  if (here === null) return refused('bench-unnamed', {})
  const elsewhere = builtElsewhere(state, here)
  switch (command.type) {
    case 'hand-over': {
      const { to, note } = command
      if (elsewhere !== null) return { ok: false, problem: elsewhere }
      if (to.id === here.id) return refused('handed-to-itself', { bench: here.name })
      return done([{ type: 'build-handed-over', version: 1, from: here, to, note: note.trim() }])
    }
    case 'take-over': {
      if (state.bench?.id === here.id) return refused('build-is-here', { bench: here.name })
      const reason = readReason(command.reason, { what: 'taken-over' })
      if (!reason.ok) return reason
      return done([
        { type: 'build-taken-over', version: 1, from: state.bench, to: here, reason: reason.value },
      ])
    }
    case 'settle-fork': {
      const { entry, over, givesWay } = command
      const reason = readReason(command.reason, { what: 'fork-settled' })
      if (!reason.ok) return reason
      const settlement = { bench: here, entry, over, reason: reason.value, ...(givesWay && { givesWay }) }
      return done([{ type: 'fork-settled', version: 1, ...settlement }])
    }
    default:
      return command satisfies never
  }
}
