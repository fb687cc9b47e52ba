import { defineConfig } from '@playwright/test'

const isRoot = process.getuid?.() === 0
const chromium = process.env.BEDPLATE_CHROMIUM

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
      args: [
        // Chromium refuses to run as root with its sandbox; only tests ever do.
        ...(isRoot ? ['--no-sandbox'] : []),
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
