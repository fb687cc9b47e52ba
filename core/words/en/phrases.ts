import type { AmountText } from '../amount.ts'
import { auditPhrases } from './audit/audit-phrases.ts'
import { hostPhrases } from './host/host-phrases.ts'
import { specProperties } from './library/spec-properties.ts'
import { sheetPhrases } from './sheet/sheet-phrases.ts'
import { specAdvice } from './audit/spec-advice.ts'

/** What one entry of a list in a spec is called, by the name of the list. */
const entries: Readonly<Record<string, string>> = {
  accepted: 'accepted doubt',
  after: 'step before it, no.',
  at: 'coordinate',
  balanceBearings: 'balance bearing',
  beads: 'bead',
  cautions: 'caution',
  chart: 'chart cell',
  checks: 'check',
  counterweights: 'counterweight',
  dangers: 'danger',
  dowels: 'dowel',
  faceParts: 'part',
  faces: 'face',
  fastenerGroups: 'fastener group',
  fasteners: 'fastener',
  fits: 'fit',
  grades: 'grade',
  keepOut: 'keep-out zone',
  layers: 'clamped part',
  marks: 'mark',
  measures: 'measure',
  numbers: 'number',
  oilPassages: 'oil passage',
  only: 'rechecked one, no.',
  orders: 'order',
  others: 'other value, no.',
  outline: 'corner',
  pages: 'page',
  parts: 'part',
  passes: 'pass',
  path: 'point',
  pistons: 'piston',
  places: 'place',
  positions: 'bearing',
  procedures: 'procedure',
  rings: 'ring',
  ringSets: 'ring set',
  rods: 'rod',
  saddles: 'saddle',
  sequence: 'fastener no.',
  size: 'size',
  steps: 'step',
  throws: 'throw',
  typedBy: 'typed value',
  undersizes: 'undersize',
  usedIn: 'use',
  walls: 'wall',
  washers: 'washer',
  wheels: 'wheel',
}

/** One step of the way to a place in a spec: a named part, or an entry of a list by its own name, else by its number. */
export interface PlacePart {
  readonly list: string | null
  readonly name: string | null
  /** Counted from 1. */
  readonly number: number
}

/** Parts of sentences: what stands in several of them, and what is made of facts of its own. */
export const phrases = {
  ...specAdvice,
  ...auditPhrases,
  ...hostPhrases,
  ...sheetPhrases,
  /** Where in the file of a spec: `procedure “case”, pass 3, “target”`. */
  placeInFile: ({ parts }: { readonly parts: readonly PlacePart[] }) =>
    parts
      .map(({ list, name, number }) => {
        const quoted = name === null ? number : `“${name}”`
        return list === null ? quoted : `${entries[list] ?? `${list} entry`} ${quoted}`
      })
      .join(', '),
  /** The same as people say it: `procedure “Case joint”, pass 3, value`. */
  placeInSpec: ({ parts }: { readonly parts: readonly PlacePart[] }) =>
    parts
      .map(({ list, name, number }) => {
        if (list === null) return specProperties[name ?? ''] ?? `“${name}”`
        return `${entries[list] ?? `${list} entry`} ${name === null ? number : `“${name}”`}`
      })
      .join(', '),
  /**
   * What a scale showed, with an adapter what the fastener got, and what was left of that once it ran down, where that goes on top
   * of the spec's torque.
   */
  reading: (facts: {
    readonly onScale: AmountText
    readonly atFastener: AmountText | null
    readonly clamping: AmountText | null
  }) =>
    facts.onScale +
    (facts.atFastener === null && facts.clamping === null ? '' : ' on the scale') +
    (facts.atFastener === null ? '' : `, ${facts.atFastener} at the fastener`) +
    (facts.clamping === null ? '' : `, ${facts.clamping} without running it down`),
  /** A name as a spec has it, in the language of the sentence. */
  nameInSpec: ({ en }: { readonly en: string; readonly de: string; readonly es: string }) => en,
  angleInAll: ({ angle }: { readonly angle: AmountText }) => `${angle} in all`,
}
