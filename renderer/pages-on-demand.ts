/** A page in a script of its own that is loaded when it is asked for; answered at once where it is there already. */
export function page<Module>(load: () => Promise<Module>): () => Module | Promise<Module> {
  let loaded: Module | undefined
  return () => loaded ?? load().then((module) => (loaded = module))
}

/** What opens a build. */
export const opening = page(() => import('./bench/opening.ts'))

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
