import { assignFromTray, readSize, wornShell } from '../../bearing/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { parseNumber } from '../../quantity/index.ts'
import type { EngineSpec, Fit } from '../../engine/index.ts'
import type { BearingCommand } from '../commands/bearing-commands.ts'
import type { BearingEvent, NotedTrayLine } from '../events/bearing-events.ts'
import { noted } from './decide-readings.ts'
import { expectedAt } from '../shells/expected-at.ts'
import { trayOf } from '../shells/from-tray.ts'

type NoteTray = Extract<BearingCommand, { type: 'note-tray' }>

/** Notes what is there to choose from. Refuses what cannot be searched, as `assignFromTray` does. */
export function noteTray(
  spec: EngineSpec,
  fit: Fit,
  { step, halves, lines }: NoteTray,
): Outcome<readonly BearingEvent[]> {
  const read: NotedTrayLine[] = []
  for (const [index, line] of lines.entries()) {
    const one = readLine(spec, fit, line, index)
    if (!one.ok) return one
    read.push(one.value)
  }
  const usable = assignFromTray(fit, trayOf({ halves, lines: read }), [])
  if (!usable.ok) return usable
  return done([{ type: 'tray-noted', version: 1, step, fit: fit.id, halves, lines: read }])
}

function readLine(
  spec: EngineSpec,
  fit: Fit,
  line: NoteTray['lines'][number],
  index: number,
): Outcome<NotedTrayLine> {
  const label = line.label.trim()
  if (label === '') return refused('tray-label-missing', { line: index + 1 }, `lines.${index}`)
  const count = parseNumber(line.count)
  if (!count.ok) return count
  if (!Number.isSafeInteger(count.value) || count.value < 0)
    return refused('count-not-whole', { label, count: count.value })
  const { grade, undersize, half } = line
  const common = { label, grade, undersize, half, count: count.value }
  if (line.wall.typed.trim() === '') return done({ ...common, wall: null })
  const expected = expectedAt(spec, fit, fit.positions[0]!, 'wall')
  const wall = readSize(line.wall.typed, line.wall.unit, { ...expected, place: label })
  if (!wall.ok) return wall
  const worn = count.value === 0 ? null : wornShell(fit, undersize, label, wall.value)
  return worn === null
    ? done({ ...common, wall: noted(line.wall, wall.value) })
    : { ok: false, problem: worn }
}
