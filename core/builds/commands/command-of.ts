import type { BearingEvent } from '../events/bearing-events.ts'
import type { BuildCommand } from './commands.ts'
import type { BuildEvent } from '../events/events.ts'

/**
 * The command that an event must have followed from, as far as the event says; null for the first entry of a build, for a revision
 * that is taken over, and for what only ever follows together with something else.
 */
export function commandOf(event: BuildEvent): BuildCommand | null {
  switch (event.type) {
    case 'build-started':
    case 'revision-taken-over':
    case 'pass-repeated':
      return null
    case 'marks-noted':
      return {
        type: 'note-marks',
        step: event.step,
        typed: event.typed,
        opens: event.opens,
        takenApart: event.takenApart,
      }
    case 'shells-chosen': {
      const others = event.choices.map(({ position, half, grade, reason }) => ({
        position,
        half,
        grade,
        reason: reason ?? 'proposed',
      }))
      return { type: 'choose-shells', step: event.step, others }
    }
    case 'half-fitted':
      // An entry without it may be of an earlier version, which did not ask or did not record the answer.
      return { type: 'fit-half', step: event.step, position: event.position, half: event.half, arrived: true }
    case 'half-taken-out': {
      const { step, position, half, reason } = event
      return { type: 'take-out-half', step, position, half, reason }
    }
    case 'part-fitted':
      return { type: 'fit-part', step: event.step }
    case 'part-taken-out':
      return { type: 'take-out-part', step: event.step, reason: event.reason ?? '' }
    case 'bead-laid':
      return { type: 'lay-bead', step: event.step }
    case 'bead-wiped-off':
      return { type: 'wipe-off-bead', step: event.step, reason: event.reason ?? '' }
    case 'check-answered': {
      const { type: _, version: __, verdict, reading, ...noted } = event
      const answer = { good: verdict === 'good', reading: reading?.typed ?? null, ...noted }
      return { type: 'answer-check', ...answer, unexplained: true }
    }
    case 'step-confirmed':
      return { type: 'confirm-step', step: event.step, second: event.second }
    case 'step-sent-back':
      return { type: 'send-back-step', step: event.step, second: event.second, reason: event.reason }
    case 'build-finished':
      return { type: 'finish-build' }
    case 'build-amended':
      return { type: 'amend-build', text: event.text, reason: event.reason }
    case 'build-voided':
      return { type: 'void-build', reason: event.reason }
    case 'build-handed-over':
      return { type: 'hand-over', to: event.to, note: event.note }
    case 'build-taken-over':
      return { type: 'take-over', reason: event.reason }
    case 'fork-settled':
      return {
        type: 'settle-fork',
        ...{ entry: event.entry, over: event.over, reason: event.reason },
        ...(event.givesWay && { givesWay: event.givesWay }),
      }
    case 'place-done': {
      const { step, place, round, note } = event
      return { type: 'do-place', step, place, round, note: note ?? '' }
    }
    case 'place-undone': {
      const { step, place, round, reason } = event
      return { type: 'undo-place', step, place, round, reason }
    }
    case 'photo-added': {
      const { step, photo, caption, part } = event
      return { type: 'add-photo', step, photo, caption, part }
    }
    case 'photo-withdrawn':
      return { type: 'withdraw-photo', entry: event.entry, reason: event.reason }
    case 'step-reopened': {
      const { step, redone, reason, opens, takenApart } = event
      // One that is open again with another follows from that one's entry.
      if (step !== redone || opens === undefined) return null
      return { type: 'redo-step', step, reason, opens, takenApart }
    }
    case 'step-skipped':
      return { type: 'skip-step', step: event.step, reason: event.reason }
    case 'skip-taken-back':
      return { type: 'take-back-skip', step: event.step, reason: event.reason }
    case 'photo-skipped':
      return { type: 'skip-photo', step: event.step, reason: event.reason }
    case 'note-written':
      return { type: 'write-note', step: event.step, text: event.text }
    case 'rings-fitted': {
      const { step, cylinder, gaps } = event
      const others = gaps.map((gap) => ({ ring: gap.ring, typed: `${gap.degrees} °` }))
      return { type: 'fit-rings', step, cylinder, others }
    }
    case 'rings-taken-off': {
      const { step, cylinder, reason } = event
      return { type: 'take-off-rings', step, cylinder, reason }
    }
    case 'crank-turned': {
      const { step, reading, readWith, verdict, note } = event
      const turned = { typed: reading?.typed ?? null, readWith, free: verdict === 'free', note }
      return { type: 'turn-crank', step, ...turned }
    }
    case 'turning-accepted':
      return { type: 'accept-turning', step: event.step, reason: event.reason }
    case 'turning-voided':
      return { type: 'void-turning', step: event.step, reason: event.reason }
    case 'limit-measured': {
      const { step, measure, at, reading, readWith } = event
      // Who was asked said that it is so; an earlier version of the program did not ask.
      return { type: 'measure-limit', step, measure, at, typed: reading.typed, readWith, sure: true }
    }
    case 'limit-accepted':
    case 'measured-part-replaced': {
      const type = event.type === 'limit-accepted' ? 'accept-measured' : 'replace-measured'
      const { step, measure, at, reason } = event
      return { type, step, measure, at, reason }
    }
    case 'parts-ticked': {
      const { type: _, version: __, reason, number, ...ticked } = event
      return { type: 'tick-parts', ...ticked, reason: reason ?? '', number: number ?? '' }
    }
    case 'ticks-removed':
      return { type: 'remove-ticks', step: event.step, part: event.part, reason: event.reason }
    case 'part-left-over': {
      const { step, part, usedIn, reason } = event
      return { type: 'leave-over', step, part, usedIn, reason }
    }
    case 'parts-counted':
      return { type: 'count-parts', step: event.step }
    case 'readings-noted':
    case 'readings-withdrawn':
    case 'undersize-declared':
    case 'basis-decided':
    case 'shells-pinned':
    case 'shells-released':
    case 'tray-noted':
    case 'thread-read':
      return bearingCommandOf(event)
    default:
      return null
  }
}

function bearingCommandOf(event: BearingEvent): BuildCommand {
  switch (event.type) {
    case 'readings-noted': {
      const { step, position, part, partTemperature, gaugeTemperature, uncertainty } = event
      const cells = event.cells.map((plane) =>
        plane.map(({ typed, unit, readWith }) => ({ typed, unit, readWith })),
      )
      return {
        type: 'note-readings',
        step,
        position,
        part,
        cells,
        // As for `arrived`.
        sure: true,
        partTemperature: partTemperature.typed,
        gaugeTemperature: gaugeTemperature?.typed ?? '',
        uncertainty: uncertainty?.typed ?? '',
      }
    }
    case 'readings-withdrawn': {
      const { step, position, part, reason } = event
      return { type: 'withdraw-readings', step, position, part, reason }
    }
    case 'undersize-declared': {
      const { step, positions, undersize, reason } = event
      return {
        type: 'declare-undersize',
        step,
        positions,
        undersize,
        ...(reason !== undefined && { reason }),
      }
    }
    case 'basis-decided': {
      const { step, position, by, reason } = event
      return { type: 'decide-basis', step, position, by, reason }
    }
    case 'shells-pinned': {
      const { step, position, upper, lower, reason } = event
      return { type: 'pin-shells', step, position, upper, lower, reason }
    }
    case 'shells-released':
      return { type: 'release-shells', step: event.step, position: event.position }
    case 'tray-noted': {
      const lines = event.lines.map(({ count, wall, ...line }) => ({
        ...line,
        count: String(count),
        wall: wall === null ? ({ typed: '', unit: 'mm' } as const) : { typed: wall.typed, unit: wall.unit },
      }))
      return { type: 'note-tray', step: event.step, halves: event.halves, lines }
    }
    case 'thread-read': {
      const { step, position, width, readWith, cardStep } = event
      const cell = ({ typed, unit }: typeof width) => ({ typed, unit })
      return { type: 'read-thread', step, position, width: cell(width), readWith, cardStep: cell(cardStep) }
    }
    default:
      return event satisfies never
  }
}
