import { svelte } from '@sveltejs/vite-plugin-svelte'
import { defineConfig } from 'vitest/config'

/** A machine under load is slow, not wrong: no test asserts a time. */
const testTimeout = 60_000

export default defineConfig({
  test: {
    allowOnly: false,
    projects: [
      {
        test: {
          name: 'node',
          testTimeout,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/e2e/**', 'tests/renderer/**'],
        },
      },
      {
        // State classes run as they do in the window: compiled for the browser, with effects, though without a page.
        plugins: [svelte({ configFile: false })],
        resolve: { conditions: ['browser', 'module', 'development'] },
        test: {
          name: 'renderer',
          testTimeout,
          include: ['tests/renderer/**/*.test.ts'],
          environment: './tests/renderer/environment.ts',
          server: { deps: { inline: [/svelte/] } },
        },
      },
    ],
  },
})
