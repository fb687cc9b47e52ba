import { onDemand as page } from './on-demand.ts'

/** The pages on which a build is carried out: a real one, or one that is practice. */
export const buildPages = {
  benchCard: page(() => import('./card/BenchCard.svelte')),
  build: page(() => import('./build-window/BuildWindow.svelte')),
  clampMap: page(() => import('./clamp/ClampMapPage.svelte')),
  people: page(() => import('./people/PeoplePage.svelte')),
  ringCard: page(() => import('./card/RingCard.svelte')),
  sheet: page(() => import('./sheet/SheetPage.svelte')),
  wrenches: page(() => import('./wrenches/Wrenches.svelte')),
} as const
