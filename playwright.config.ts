import { join } from 'node:path'
import { defineConfig } from '@playwright/test'

const chromium = process.env.BEDPLATE_CHROMIUM
// Chromium refuses to run as root with its sandbox; where it has none for anybody, the run of the tests has found that out.
const chromiumSandbox = process.getuid?.() !== 0 && process.env.BEDPLATE_SANDBOX !== 'off'

// Workers and the hosts that they start read and strip core once, not each of them again.
process.env.NODE_COMPILE_CACHE ??= join(import.meta.dirname, 'dist/compile-cache')

/** The desktop host runs the tests that go through main, or with `BEDPLATE_HOSTS=all` every test that can run there. */
const inAllHosts = process.env.BEDPLATE_HOSTS === 'all'
const onDesktop = [
  'archive',
  'gauge',
  'interrupted',
  'opened-files',
  'people',
  'record',
  'renderer-killed',
  'sheet',
  'shells',
  'shells-asked',
  'shells-charts',
  'shells-papers',
  'tightening',
  'tightening-again',
  'tightening-papers',
  'whole-job',
]

/** Subjects of the local host alone, or of no host. */
const notOnDesktop = ['gallery.spec.ts', 'local-host.spec.ts']

export default defineConfig<{ host: 'local' | 'alone' | 'played' | 'electron' }>({
  testDir: 'tests/e2e',
  outputDir: 'test-results/hosts',
  workers: 2, // two cores; a third worker made the run no shorter
  forbidOnly: true,
  // In a whole run, where others compete for the machine; what passes only then is named at its end.
  retries: process.env.CI === undefined ? 0 : 1,
  // A machine under load is slow, not wrong.
  timeout: 120_000,
  expect: { timeout: 20_000 },
  projects: [
    {
      name: 'local',
      // One page a worker, emptied between tests: a new one compiles the window's scripts again.
      use: { host: 'local', reuseContext: true },
      testIgnore: ['electron.spec.ts', 'renderer-killed.spec.ts'],
      ...(inAllHosts ? {} : { grepInvert: /@desktop-alone/ }),
    },
    // Each starts main several times, and a broken one is waited for in vain.
    {
      name: 'laws',
      testDir: 'tests/electron-stand-in/laws',
      outputDir: 'test-results/laws', // a run of its own, and what it leaves is not for the next one to clear away
      timeout: 180_000,
    },
    // What a page is to those who cannot see or point is the page's alone, and takes long to look at.
    {
      name: 'desktop',
      use: { host: 'played' },
      testMatch: onDesktop.map((name) => `**/e2e/${name}.spec.ts`),
      ...(inAllHosts ? {} : { grep: /@desktop/ }),
      grepInvert: /by everybody/,
    },
    {
      name: 'electron',
      use: { host: 'electron' },
      ...(process.env.BEDPLATE_ELECTRON === undefined
        ? { testMatch: 'electron.spec.ts' }
        : { testIgnore: notOnDesktop }),
    },
  ],
  use: {
    browserName: 'chromium',
    viewport: { width: 1280, height: 800 },
    screenshot: 'only-on-failure',
    trace: 'off', // a third of the time of a run; a test that fails is run again with `--trace on`
    launchOptions: {
      ...(chromium === undefined ? {} : { executablePath: chromium }),
      chromiumSandbox,
      args: [
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        // The page of the next test is drawn by the same process, which has the scripts compiled: half the cost of a load.
        '--renderer-process-limit=1',
        // A page lives for seconds in a test: what V8 spends on faster code is earned back in long loops alone.
        '--js-flags=--no-maglev --interrupt-budget=1000000',
      ],
    },
  },
})
