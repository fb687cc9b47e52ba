import type { Environment } from 'vitest/runtime'

/** Makes vitest compile Svelte modules for the browser while the test itself stays in Node. */
export default {
  name: 'svelte-client',
  viteEnvironment: 'client',
  setup: () => ({ teardown: () => undefined }),
} satisfies Environment
