import { done, refused, type Outcome } from '../problem/index.ts'
import { asTyped } from './as-typed.ts'
import { inMillimetres, lengthOf, parseLength, type Length } from './length.ts'

/** ISO metric threads, and unified inch threads, which have another root (ASME B1.1). */
export type ThreadSystem = 'metric' | 'unified'

/** A thread as it is marked on a drawing. */
export interface ThreadDesignation {
  readonly diameter: Length
  readonly pitch: Length
  readonly system: ThreadSystem
}

/** The coarse pitch of each diameter in mm (ISO 261, ISO 262): the one that is meant when none is named. */
const coarse: Readonly<Record<string, number>> = {
  3: 0.5,
  4: 0.7,
  5: 0.8,
  6: 1,
  7: 1,
  8: 1.25,
  10: 1.5,
  12: 1.75,
  14: 2,
  16: 2,
  18: 2.5,
  20: 2.5,
  22: 2.5,
  24: 3,
  27: 3,
  30: 3.5,
  33: 3.5,
  36: 4,
  39: 4,
}

/** Threads to the inch of each size in the two common series (ASME B1.1, table 2). */
const series: Readonly<Record<'UNC' | 'UNF', Readonly<Record<string, number>>>> = {
  UNC: {
    '#4': 40,
    '#5': 40,
    '#6': 32,
    '#8': 32,
    '#10': 24,
    '#12': 24,
    '1/4': 20,
    '5/16': 18,
    '3/8': 16,
    '7/16': 14,
    '1/2': 13,
    '9/16': 12,
    '5/8': 11,
    '3/4': 10,
    '7/8': 9,
    '1': 8,
    '1 1/8': 7,
    '1 1/4': 7,
    '1 3/8': 6,
    '1 1/2': 6,
  },
  UNF: {
    '#4': 48,
    '#5': 44,
    '#6': 40,
    '#8': 36,
    '#10': 32,
    '#12': 28,
    '1/4': 28,
    '5/16': 24,
    '3/8': 24,
    '7/16': 20,
    '1/2': 20,
    '9/16': 18,
    '5/8': 18,
    '3/4': 16,
    '7/8': 14,
    '1': 12,
    '1 1/8': 12,
    '1 1/4': 12,
    '1 3/8': 12,
    '1 1/2': 12,
  },
}

const metric = /^M\s?(\d+(?:[.,]\d+)?)(?:\s?[x×]\s?(\d+(?:[.,]\d+)?))?$/i
const unified = /^(#?\d+(?:[ -]\d+\/\d+|\/\d+)?)\s?-\s?(\d+)\s?(UNC|UNF)$/i

/**
 * `M10`, `M10×1.25`, `3/8-16 UNC`, `#10-32 UNF`. A metric diameter without a pitch has its coarse one; an inch thread must be one of
 * its series, so that a slip in either of its numbers shows.
 *
 * Refuses `thread-designation-unknown`.
 */
export function readThread(typed: string): Outcome<ThreadDesignation> {
  const text = typed.trim()
  const unknown = refused('thread-designation-unknown', { typed: asTyped(text) })
  const [, diameter, pitch] = metric.exec(text) ?? []
  if (diameter !== undefined) {
    const d = parseLength(diameter, 'mm')
    if (!d.ok) return unknown
    const p = parseLength(pitch ?? String(coarse[inMillimetres(d.value)] ?? ''), 'mm')
    if (!p.ok || d.value === 0 || p.value === 0) return unknown
    return done({ diameter: d.value, pitch: p.value, system: 'metric' })
  }
  const [, size, perInch, name] = unified.exec(text) ?? []
  if (size === undefined || name === undefined) return unknown
  const key = size.replace('-', ' ')
  const known = series[name.toUpperCase() as keyof typeof series][key]
  if (known === undefined || known !== Number(perInch)) return unknown
  return done({
    diameter: lengthOf(inchesOf(key), 'in'),
    pitch: lengthOf(1 / known, 'in'),
    system: 'unified',
  })
}

/** The name of an inch thread in its series, `3/8-16 UNC`; null for one that is in neither. */
export function unifiedName(diameter: Length, pitch: Length): string | null {
  for (const name of ['UNC', 'UNF'] as const)
    for (const [size, perInch] of Object.entries(series[name]))
      if (lengthOf(inchesOf(size), 'in') === diameter && lengthOf(1 / perInch, 'in') === pitch)
        return `${size}-${perInch} ${name}`
  return null
}

/** Numbered sizes are 0.060 in and 0.013 in for each number (ASME B1.1). */
function inchesOf(size: string): number {
  if (size.startsWith('#')) return 0.06 + 0.013 * Number(size.slice(1))
  return size
    .split(' ')
    .map((part) => part.split('/').map(Number))
    .reduce((total, [over = 0, under = 1]) => total + over / under, 0)
}
