import type { AmountText } from '../amount.ts'
import { auditPhrases } from './audit/audit-phrases.ts'
import { hostPhrases } from './host/host-phrases.ts'
import { specProperties } from './library/spec-properties.ts'
import { sheetPhrases } from './sheet/sheet-phrases.ts'
import { specAdvice } from './audit/spec-advice.ts'

/** What one entry of a list in a spec is called, by the name of the list. */
const entries: Readonly<Record<string, string>> = {
  balanceBearings: 'balance bearing',
  beads: 'bead',
  cautions: 'caution',
  counterweights: 'counterweight',
  chart: 'chart cell',
  dowels: 'dowel',
  faceParts: 'part',
  faces: 'face',
  fastenerGroups: 'fastener group',
  fasteners: 'fastener',
  fits: 'fit',
  grades: 'grade',
  keepOut: 'keep-out zone',
  marks: 'mark',
  oilPassages: 'oil passage',
  measures: 'measure',
  orders: 'order',
  outline: 'corner',
  passes: 'pass',
  parts: 'part',
  path: 'point',
  procedures: 'procedure',
  rods: 'rod',
  saddles: 'saddle',
  steps: 'step',
  throws: 'throw',
  undersizes: 'undersize',
  usedIn: 'use',
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
  angleInAll: ({ angle }: { readonly angle: AmountText }) => `${angle} in all`,
}
