import { join } from 'node:path'
import { svelte } from '@sveltejs/vite-plugin-svelte'
import { defineConfig } from 'vite'

/**
 * The renderer, built so that it runs under a policy without inline scripts and styles: every script, style, font
 * and picture is a file of its own.
 */
export default defineConfig({
  root: join(import.meta.dirname, 'renderer'),
  base: './',
  publicDir: false,
  plugins: [svelte({ configFile: false })],
  build: {
    outDir: '../build/renderer',
    emptyOutDir: true,
    target: 'chrome120',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
})
