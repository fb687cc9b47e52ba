import { createContext } from 'svelte'
import type { Bench } from './bench.svelte.ts'
import type { DrawingTable } from './drawing-table.svelte.ts'
import type { OpenBuild } from './open-build.svelte.ts'

/** The bench of this window. */
export const [useBench, provideBench] = createContext<Bench>()
/** The build that a page is about, for the parts of the page. */
export const [useOpenBuild, provideOpenBuild] = createContext<OpenBuild>()
/** How the drawing of the build window lies, for the parts of that window. */
export const [useTable, provideTable] = createContext<DrawingTable>()
