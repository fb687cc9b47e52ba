import { passes } from '../tightening/passes.ts'
import { engineParts } from '../engine-parts.ts'

export interface OfProcedure {
  readonly procedure: string
}
export interface OfStep {
  readonly step: string
}

const { halves } = engineParts
const measuredParts = { housing: 'bore', journal: 'journal' }

/** What on a build sheet was put right, or is compared with another build. */
export const sheetPhrases = {
  procedureCalled: ({ procedure }: OfProcedure) => procedure,
  stepCalled: ({ step }: OfStep) => step,
  partIn: ({ part, step }: OfStep & { readonly part: string }) => `${part}, ${step}`,
  stepBy: ({ step, person }: OfStep & { readonly person: string }) => `${step}, by ${person}`,
  bearingOf: ({ fit, position }: { readonly fit: string; readonly position: string }) =>
    `${fit}, ${position}`,
  halfAt: ({ position, half }: { readonly position: string; readonly half: keyof typeof halves }) =>
    `${position} ${halves[half]}`,
  partAt: (facts: { readonly position: string; readonly part: keyof typeof measuredParts }) =>
    `${facts.position}, ${measuredParts[facts.part]}`,
  /** `number` is null for an action between two passes. */
  pullOf: (facts: OfProcedure & { readonly number: string | null; readonly pull: number }) =>
    `${facts.procedure}, ${facts.number ?? `pull ${facts.pull}`}`,
  fastenerOf: ({ procedure, number }: OfProcedure & { readonly number: string }) => `${procedure}, ${number}`,
  fromPassOf: ({ procedure, pass }: OfProcedure & { readonly pass: number }) =>
    `${procedure}, from pass ${pass}`,
  /** `thing` is the number of the fastener, or what is done between two passes. */
  pullInPass: (
    facts: OfProcedure & {
      readonly pass: number
      readonly kind: keyof typeof passes.kinds
      readonly thing: string
    },
  ) => `${facts.procedure}, pass ${facts.pass} (${passes.kinds[facts.kind]}), ${facts.thing}`,
}
