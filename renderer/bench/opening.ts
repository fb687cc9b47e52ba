/** What the window needs of a build once one is opened: spec, rules and record, which the list of builds does without. */
export { OpenBuild } from './open-build.svelte.ts'
export { OrderDraft } from '../steps/run/order/order-draft.svelte.ts'
