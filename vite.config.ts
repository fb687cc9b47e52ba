import { join } from 'node:path'
import { svelte } from '@sveltejs/vite-plugin-svelte'
import { defineConfig } from 'vite'

const at = (...path: readonly string[]) => join(import.meta.dirname, ...path)

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
    rolldownOptions: { treeshake: { moduleSideEffects: [{ test: /\/core\/.*\.ts$/, sideEffects: false }] } },
  },
}))
