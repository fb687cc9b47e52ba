import { svelte } from '@sveltejs/vite-plugin-svelte'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    allowOnly: false,
    testTimeout: 60_000, // a machine under load is slow, not wrong: no test asserts a time
    projects: [
      {
        test: {
          name: 'node',
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
          include: ['tests/renderer/**/*.test.ts'],
          environment: './tests/renderer/environment.ts',
          server: { deps: { inline: [/svelte/] } },
        },
      },
    ],
  },
})
