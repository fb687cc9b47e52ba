import { join } from 'node:path'
import { stripVTControlCharacters } from 'node:util'
import { createBuilder } from 'vite'
import { digestOfSources, isTarget, noteBuilt, targets, type Target } from './freshness.ts'

// `npm run build [TARGET …]`: the parts of the program that must be built, whether they are stale or not.
const root = join(import.meta.dirname, '../..')
const configs: Readonly<Record<Target, string>> = {
  renderer: 'vite.config.ts',
  local: 'electron/local/vite.config.ts',
  desktop: 'electron/desktop/vite.config.ts',
}
const named = process.argv.slice(2)

async function make(target: Target): Promise<void> {
  const digest = digestOfSources(root, target)
  // With null, as in the vite command: what the configuration names as its builder, else a page alone.
  const builder = await createBuilder({ configFile: join(root, configs[target]), logLevel: 'warn' }, null)
  await builder.buildApp()
  noteBuilt(root, target, digest)
}

try {
  for (const target of named.length === 0 ? targets : named.filter(isTarget)) await make(target)
} catch (error) {
  console.error(stripVTControlCharacters(error instanceof Error ? error.message : String(error)))
  process.exitCode = 1
}
