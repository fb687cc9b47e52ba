import { defineConfig } from '@playwright/test'

const chromium = process.env.BEDPLATE_CHROMIUM
// Chromium refuses to run as root with its sandbox; where it has none for anybody, the run of the tests has found that out.
const chromiumSandbox = process.getuid?.() !== 0 && process.env.BEDPLATE_SANDBOX !== 'off'

export default defineConfig({
  testDir: 'tests/e2e',
  outputDir: 'test-results',
  workers: 1, // two cores: one for the browser, one for the host
  forbidOnly: true,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  use: {
    browserName: 'chromium',
    viewport: { width: 1280, height: 800 },
    screenshot: 'only-on-failure',
    trace: 'retain-on-failure',
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
