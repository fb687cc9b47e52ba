import type { sheetPhrases as pattern } from '../../en/sheet/sheet-phrases.ts'
import type { Table } from '../../table.ts'
import { halves } from '../halves.ts'
import { passes } from '../tightening/passes.ts'

const measuredParts = { housing: 'Bohrung', journal: 'Zapfen' }

export const sheetPhrases: Table<typeof pattern> = {
  procedureCalled: ({ procedure }) => procedure,
  stepCalled: ({ step }) => step,
  partIn: ({ part, step }) => `${part}, ${step}`,
  stepBy: ({ step, person }) => `${step}, ${person}`,
  bearingOf: ({ fit, position }) => `${fit}, ${position}`,
  halfAt: ({ position, half }) => `${position} ${halves[half]}`,
  partAt: (facts) => `${facts.position}, ${measuredParts[facts.part]}`,
  pullOf: (facts) => `${facts.procedure}, ${facts.number ?? `Anzug ${facts.pull}`}`,
  fastenerOf: ({ procedure, number }) => `${procedure}, ${number}`,
  fromPassOf: ({ procedure, pass }) => `${procedure}, ab Durchgang ${pass}`,
  pullInPass: (facts) =>
    `${facts.procedure}, Durchgang ${facts.pass} (${passes.kinds[facts.kind]}), ${facts.thing}`,
}
