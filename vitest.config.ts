import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { svelte } from '@sveltejs/vite-plugin-svelte'
import { defineConfig } from 'vitest/config'

/** A machine under load is slow, not wrong: no test asserts a time. */
const testTimeout = 60_000

/** A test that asserts in a loop over nothing has proved nothing, and fails. */
const expectations = { requireAssertions: true }

/**
 * Files share what they import: loading core and the compiler's work again for each of two hundred files took more
 * processor time than the tests. So a test leaves no module changed; one that must, goes where files are kept apart.
 */
const sharedModules = { pool: 'threads', isolate: false } as const

/** Programs that tests start strip the types of core once, not each of them again. */
const env = { NODE_COMPILE_CACHE: join(import.meta.dirname, 'dist/compile-cache') }

/** Those that put a module in the place of Electron: each has its modules for itself. */
const playsElectron = globSync('tests/electron/desktop/**/*.test.ts', { cwd: import.meta.dirname }).filter(
  (file) => readFileSync(join(import.meta.dirname, file), 'utf8').includes('vi.mock('),
)

export default defineConfig({
  test: {
    allowOnly: false,
    projects: [
      {
        test: {
          name: 'node',
          testTimeout,
          env,
          expect: expectations,
          ...sharedModules,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/e2e/**', 'tests/renderer/**', ...playsElectron],
        },
      },
      {
        test: {
          name: 'desktop',
          testTimeout,
          env,
          expect: expectations,
          pool: 'threads',
          include: playsElectron,
        },
      },
      {
        // State classes run as they do in the window: compiled for the browser, with effects, though without a page.
        plugins: [svelte({ configFile: false })],
        resolve: { conditions: ['browser', 'module', 'development'] },
        test: {
          name: 'renderer',
          testTimeout,
          expect: expectations,
          ...sharedModules,
          include: ['tests/renderer/**/*.test.ts'],
          environment: './tests/renderer/environment.ts',
          server: { deps: { inline: [/svelte/] } },
        },
      },
    ],
  },
})
