import type { Language } from '../core/words/index.ts'
import { opening } from './bench/opening.ts'
import { helpTexts } from './help/texts.ts'
import { onDemand as page } from './on-demand.ts'
import { buildPages } from './pages-on-demand.ts'

/**
 * The pages that the first one does not need, each in a script of its own that is loaded when it is asked for. One that is
 * there already is answered at once, so that going to it leaves no moment without a page.
 */
export const pages = {
  ...buildPages,
  archive: page(() => import('./archive/ArchivePage.svelte')),
  draft: page(() => import('./editor/DraftPage.svelte')),
  help: page(() => import('./help/HelpPage.svelte')),
  instruments: page(() => import('./settings/InstrumentsPage.svelte')),
  comparison: page(() => import('./archive/ComparePage.svelte')),
  library: page(() => import('./library/LibraryPage.svelte')),
  practice: page(() => import('./practice/PracticePage.svelte')),
  record: page(() => import('./record/RecordPage.svelte')),
  rescue: page(() => import('./record/RescuePage.svelte')),
  lines: page(() => import('./shop/LinesPage.svelte')),
  shop: page(() => import('./shop/ShopPage.svelte')),
  wall: page(() => import('./shop/WallPage.svelte')),
  revision: page(() => import('./revision/RevisionPage.svelte')),
  screenAndKeys: page(() => import('./settings/ScreenAndKeys.svelte')),
} as const

/** Loads the rest once the first page stands, so that every page is there even after the host has gone. */
export function loadAllWhenIdle(language: Language): void {
  requestIdleCallback(
    () =>
      void Promise.allSettled(
        [...Object.values(opening), ...Object.values(pages), helpTexts[language]].map(async (load) => load()),
      ),
  )
}
