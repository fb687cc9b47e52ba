import { existsSync, globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { svelte } from '@sveltejs/vite-plugin-svelte'
import type { Plugin } from 'vite'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** A machine under load is slow, not wrong: no test asserts a time. */
const testTimeout = 60_000

/** A test that asserts in a loop over nothing has proved nothing, and fails. */
const expectations = { requireAssertions: true }

/**
 * Files share what they import: loading core and the compiler's work again for each of two hundred files took more
 * processor time than the tests. So a test leaves no module changed; one that must, goes where files are kept apart.
 */
const sharedModules = { pool: 'threads', isolate: false } as const

/**
 * Node imports the sources as it does in the program, by taking away their types: Vite's own way of importing put a getter
 * before each use of what another module exports, which took as much processor time as the work itself.
 * A test that puts one module in the place of another (`vi.mock`) needs Vite's way.
 */
const byNode = { experimental: { viteModuleRunner: false, nodeLoader: false } } as const

/** Programs that tests start strip the types of core once, not each of them again. */
const env = { NODE_COMPILE_CACHE: join(import.meta.dirname, 'dist/compile-cache') }

/** Those that put a module in the place of Electron: each has its modules for itself. */
const playsElectron = globSync('tests/electron/desktop/**/*.test.ts', { cwd: import.meta.dirname }).filter(
  (file) => readFileSync(join(import.meta.dirname, file), 'utf8').includes('vi.mock('),
)

/** Those that take long for their size, the longest first. */
const long = [
  'tests/renderer/gallery/entries.test.ts',
  'tests/renderer/editor/check/check-work.test.ts',
  'tests/renderer/editor/entered.test.ts',
  'tests/electron/store/closed-places.test.ts',
  'tests/electron/store/killed.test.ts',
  'tests/electron/launch/audit.test.ts',
  'tests/electron/shop/postgres.test.ts',
  'tests/electron/launch/desktop-run.test.ts',
  'tests/core/layout/rules.test.ts',
  'tests/core/practice/fault/fault-drill.test.ts',
  'tests/core/engine/fuzz.test.ts',
  'tests/editor/every-part.test.ts',
  'tests/electron/fuzz/logs.test.ts',
  'tests/core/builds/drawing/list-and-drawing.test.ts',
  'tests/core/tightening/run/advice.test.ts',
  'tests/electron/fuzz/requests.test.ts',
  'tests/core/drafts/remembering.test.ts',
  'tests/core/layout/every-demo.test.ts',
  'tests/core/builds/commands/any-commands.test.ts',
  'tests/core/engine/json-schema.test.ts',
  'tests/electron/requests/exchange/import-rules.test.ts',
  'tests/electron/requests/exchange/exchange.test.ts',
  'tests/electron/requests/whole-build.test.ts',
  'tests/core/words/no-texts-elsewhere.test.ts',
  'tests/electron/requests/rescue.test.ts',
  'tests/core/builds/plan/redo.test.ts',
  'tests/core/bearing/tray/stock-against-highs.test.ts',
  'tests/layers.test.ts',
]
for (const file of long)
  if (!existsSync(join(import.meta.dirname, file))) throw new Error(`vitest.config.ts: ${file} is not there`)

/** A worker is kept while its project goes on, so each project is run in one go; the one with the most small files comes last. */
const inTurn = ['renderer', 'desktop', 'node']

/** Of two workers one would be left with a long file at the end: what is long comes first, what is small fills the gaps. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files)
    const place = ({ moduleId }: TestSpecification): number => {
      const at = long.findIndex((file) => moduleId.endsWith(`/${file}`))
      return at === -1 ? long.length : at
    }
    const turn = ({ project }: TestSpecification): number => inTurn.indexOf(project.name)
    return sorted.toSorted((one, other) => turn(one) - turn(other) || place(one) - place(other))
  }
}

/**
 * None of these tests puts a component on a page, so none is compiled: that took half the processor time of the project. The
 * type check, the build and the end-to-end tests compile them.
 */
const withoutComponents: Plugin = {
  name: 'without-components',
  load: (id) => (id.endsWith('.svelte') ? 'export default {}' : null),
}

export default defineConfig({
  test: {
    allowOnly: false,
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        test: {
          name: 'node',
          testTimeout,
          env,
          expect: expectations,
          ...sharedModules,
          ...byNode,
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
        plugins: [withoutComponents, svelte({ configFile: false, exclude: ['**/*.svelte'] })],
        resolve: { conditions: ['browser', 'module', 'development'] },
        test: {
          name: 'renderer',
          testTimeout,
          expect: expectations,
          ...sharedModules,
          include: ['tests/renderer/**/*.test.ts'],
          environment: './tests/renderer/environment.ts',
          // The core is imported by Node, as in the other project.
          server: { deps: { inline: [/svelte/], external: [/\/core\/.*\.ts$/] } },
        },
      },
    ],
  },
})
