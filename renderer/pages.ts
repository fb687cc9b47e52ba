/**
 * The pages that the first one does not need, each in a script of its own that is loaded when it is asked for. The host
 * serves this machine alone, so that takes no time that is seen.
 */
export const pages = {
  archive: () => import('./archive/ArchivePage.svelte'),
  benchCard: () => import('./card/BenchCard.svelte'),
  build: () => import('./build-window/BuildWindow.svelte'),
  clampMap: () => import('./clamp/ClampMapPage.svelte'),
  comparison: () => import('./archive/ComparePage.svelte'),
  people: () => import('./people/PeoplePage.svelte'),
  record: () => import('./record/RecordPage.svelte'),
  rescue: () => import('./record/RescuePage.svelte'),
  screenAndKeys: () => import('./settings/ScreenAndKeys.svelte'),
  sheet: () => import('./sheet/SheetPage.svelte'),
  wrenches: () => import('./wrenches/Wrenches.svelte'),
} as const

/** Loads the rest once the first page stands, so that every page is there even after the host has gone. */
export function loadAllWhenIdle(): void {
  requestIdleCallback(() => void Promise.allSettled(Object.values(pages).map((load) => load())))
}
