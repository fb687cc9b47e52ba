import type { sheetPhrases as english } from '../../en/sheet/sheet-phrases.ts'
import { engineParts } from '../engine-parts.ts'
import { passes } from '../tightening/passes.ts'

const measuredParts = { housing: 'alojamiento', journal: 'muñón' }

export const sheetPhrases: typeof english = {
  procedureCalled: ({ procedure }) => procedure,
  stepCalled: ({ step }) => step,
  partIn: ({ part, step }) => `${part}, ${step}`,
  stepBy: ({ step, person }) => `${step}, por ${person}`,
  bearingOf: ({ fit, position }) => `${fit}, ${position}`,
  halfAt: ({ position, half }) => `${position} ${engineParts.halves[half]}`,
  partAt: ({ position, part }) => `${position}, ${measuredParts[part]}`,
  pullOf: ({ procedure, number, pull }) => `${procedure}, ${number ?? `apriete ${pull}`}`,
  fastenerOf: ({ procedure, number }) => `${procedure}, ${number}`,
  fromPassOf: ({ procedure, pass }) => `${procedure}, desde la pasada ${pass}`,
  pullInPass: ({ procedure, pass, kind, thing }) =>
    `${procedure}, pasada ${pass} (${passes.kinds[kind]}), ${thing}`,
}
