import type { WrittenWrench } from '../../core/contract/index.ts'
import type { TorqueUnit } from '../../core/quantity/index.ts'

/** A wrench while its form is filled in: every field as typed. */
export interface WrenchDraft {
  id: string
  name: string
  number: string
  least: string
  most: string
  unit: TorqueUnit
  step: string
  minimum: string
  made: string
  length: string
  on: string
  cycles: string
  adapters: { id: string; name: string; offset: string; angle: string }[]
}

export function emptyDraft(id: string): WrenchDraft {
  return {
    id,
    name: '',
    number: '',
    least: '',
    most: '',
    unit: 'N·m',
    step: '',
    minimum: '',
    made: '',
    length: '',
    on: '',
    cycles: '0',
    adapters: [],
  }
}

export function draftOf(written: WrittenWrench): WrenchDraft {
  const { unit, step } = written.scale
  const bare = (torque: string | undefined) => (torque ?? '').replace(` ${unit}`, '')
  return {
    id: written.id,
    name: written.name,
    number: written.number ?? '',
    least: bare(written.range.least),
    most: bare(written.range.most),
    unit,
    step: String(step),
    minimum: bare(written.statedMinimum),
    made: written.made ? `${written.made.type} ${written.made.class}` : '',
    length: written.length ?? '',
    on: written.calibration?.on ?? '',
    cycles: String(written.calibration?.cycles ?? 0),
    adapters: written.adapters.map((adapter) => ({ ...adapter })),
  }
}

/** As it is kept: a bare number has the unit of the scale, a bare length is in mm, a bare angle in degrees. */
export function writtenOf(draft: WrenchDraft): WrittenWrench {
  const typed = (text: string, unit: string) => {
    const trimmed = text.trim()
    return /^[\d.,]+$/.test(trimmed) ? `${trimmed} ${unit}` : trimmed
  }
  const [, type, letter] = /^\s*(II?)\s*([A-Za-z])\s*$/.exec(draft.made) ?? []
  return {
    id: draft.id,
    name: draft.name.trim(),
    ...(draft.number.trim() && { number: draft.number.trim() }),
    range: { least: typed(draft.least, draft.unit), most: typed(draft.most, draft.unit) },
    ...(draft.minimum.trim() && { statedMinimum: typed(draft.minimum, draft.unit) }),
    scale: { unit: draft.unit, step: Number(draft.step.replace(',', '.')) || 0 },
    ...(draft.made.trim() && {
      made: { type: type === 'I' ? 'I' : 'II', class: letter?.toUpperCase() ?? '?' } as const,
    }),
    ...(draft.length.trim() && { length: typed(draft.length, 'mm') }),
    adapters: draft.adapters.map(({ id, name, offset, angle }) => ({
      id,
      name: name.trim(),
      offset: typed(offset, 'mm'),
      angle: typed(angle, '°'),
    })),
    ...(draft.on && {
      calibration: { on: draft.on, cycles: Math.max(0, Math.round(Number(draft.cycles))) || 0 },
    }),
  }
}
