import { join } from 'node:path'
import { svelte } from '@sveltejs/vite-plugin-svelte'
import { defineConfig, type Rolldown } from 'vite'

const at = (...path: readonly string[]) => join(import.meta.dirname, ...path)

/**
 * What the first page needs is one script beside its entry. What several of the other pages share is in few: otherwise each set of
 * pages that share something has a script of its own, 75 of them below 5 kB, and each is a request. The entry is by itself: it waits
 * for a language, which would wait for it.
 */
const scripts: Rolldown.CodeSplittingGroup[] = [
  {
    name: 'first',
    tags: ['$initial'],
    test: /^(?!.*\/renderer\/(gallery\/)?(main\.ts|index\.html))/,
    priority: 1,
  },
  { name: 'shared', minShareCount: 2, entriesAware: true, entriesAwareMergeThreshold: 6000 },
]

/**
 * The renderer, built so that it runs under a policy without inline scripts and styles: every script, style, font
 * and picture is a file of its own. In mode `gallery` it is the development-only page that shows each part in each state.
 */
export default defineConfig(({ mode }) => ({
  root: mode === 'gallery' ? at('renderer/gallery') : at('renderer'),
  base: './',
  publicDir: false,
  cacheDir: at('dist/vite'),
  plugins: [svelte({ configFile: false })],
  server: { fs: { allow: [import.meta.dirname] } },
  build: {
    outDir: mode === 'gallery' ? at('dist/gallery') : at('dist/renderer'),
    emptyOutDir: true,
    target: 'chrome120',
    assetsInlineLimit: 0,
    license: { fileName: 'licences.md' }, // goes into the packages, see electron/packaging
    modulePreload: { polyfill: false },
    // Core does nothing when it is loaded, so a page takes along what it uses of a folder and not all behind its index.
    rolldownOptions: {
      checks: { pluginTimings: false, bundlerTimings: false }, // a slow machine is no fault to warn of
      treeshake: { moduleSideEffects: [{ test: /\/core\/.*\.ts$/, sideEffects: false }] },
      output: { codeSplitting: { groups: scripts } },
    },
  },
}))
