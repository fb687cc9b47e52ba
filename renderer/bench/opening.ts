import { onDemand } from '../on-demand.ts'

/** What opens a build, spec and rules and record: the list of builds does without. */
export const opening = {
  build: onDemand(() => import('./open-build.svelte.ts')),
  order: onDemand(() => import('../steps/run/order/order-draft.svelte.ts')),
} as const
