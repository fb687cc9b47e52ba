/**
 * The pages that the first one does not need, each in a script of its own that is loaded when it is asked for. One that is
 * there already is answered at once, so that going to it leaves no moment without a page.
 */
export const pages = {
  archive: page(() => import('./archive/ArchivePage.svelte')),
  benchCard: page(() => import('./card/BenchCard.svelte')),
  build: page(() => import('./build-window/BuildWindow.svelte')),
  clampMap: page(() => import('./clamp/ClampMapPage.svelte')),
  comparison: page(() => import('./archive/ComparePage.svelte')),
  people: page(() => import('./people/PeoplePage.svelte')),
  practice: page(() => import('./practice/PracticePage.svelte')),
  record: page(() => import('./record/RecordPage.svelte')),
  rescue: page(() => import('./record/RescuePage.svelte')),
  screenAndKeys: page(() => import('./settings/ScreenAndKeys.svelte')),
  sheet: page(() => import('./sheet/SheetPage.svelte')),
  wrenches: page(() => import('./wrenches/Wrenches.svelte')),
} as const

/** Loads the rest once the first page stands, so that every page is there even after the host has gone. */
export function loadAllWhenIdle(): void {
  requestIdleCallback(() => void Promise.allSettled(Object.values(pages).map(async (load) => load())))
}

function page<Module>(load: () => Promise<Module>): () => Module | Promise<Module> {
  let loaded: Module | undefined
  return () => loaded ?? load().then((module) => (loaded = module))
}
