import { join } from 'node:path'
import { createBuilder } from 'vite'
import { digestOfSources, isTarget, noteBuilt, targets } from './freshness.ts'

// `npm run build [TARGET …]`: the parts of the program that must be built, whether they are stale or not.
const root = join(import.meta.dirname, '../..')
const configs = { renderer: 'vite.config.ts', desktop: 'electron/desktop/vite.config.ts' }
const asked = process.argv.slice(2)

for (const target of asked.length === 0 ? targets : asked.filter(isTarget)) {
  const digest = digestOfSources(root, target)
  const builder = await createBuilder({ configFile: join(root, configs[target]), logLevel: 'warn' })
  await builder.buildApp()
  noteBuilt(root, target, digest)
}
