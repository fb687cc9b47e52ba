import { defineConfig } from '@playwright/test'

const chromium = process.env.BEDPLATE_CHROMIUM
// Chromium refuses to run as root with its sandbox; where it has none for anybody, the run of the tests has found that out.
const chromiumSandbox = process.getuid?.() !== 0 && process.env.BEDPLATE_SANDBOX !== 'off'

/** What must hold in the desktop host too, at every run: it goes through main, the preload, a saved file or a restart. */
const onDesktop = [
  'archive',
  'gauge',
  'interrupted',
  'opened-files',
  'people',
  'renderer-killed',
  'sheet',
  'shells',
  'shells-papers',
  'tightening',
  'whole-job',
]
/** What holds there too, and asks nothing of main that the others do not: with `BEDPLATE_HOSTS=all`. */
const alsoOnDesktop = ['record', 'shells-asked', 'shells-charts', 'tightening-again', 'tightening-papers']
const desktopFiles = [...onDesktop, ...(process.env.BEDPLATE_HOSTS === 'all' ? alsoOnDesktop : [])]

/** Subjects of the local host alone, or of no host. */
const notOnDesktop = ['gallery.spec.ts', 'local-host.spec.ts']

export default defineConfig<{ host: 'local' | 'played' | 'electron' }>({
  testDir: 'tests/e2e',
  outputDir: 'test-results',
  workers: 2, // two cores; a test waits for its browser or its host most of the time
  forbidOnly: true,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  projects: [
    { name: 'local', use: { host: 'local' }, testIgnore: ['electron.spec.ts', 'renderer-killed.spec.ts'] },
    // Each starts main several times, and a broken one is waited for in vain.
    { name: 'laws', testDir: 'tests/electron-stand-in/laws', timeout: 180_000 },
    // What a page is to those who cannot see or point is the page's alone, and takes long to look at.
    {
      name: 'desktop',
      use: { host: 'played' },
      testMatch: desktopFiles.map((name) => `**/e2e/${name}.spec.ts`),
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
      ],
    },
  },
})
