import { join } from 'node:path'
import { defineConfig, type EnvironmentOptions } from 'vite'

const root = join(import.meta.dirname, '../..')

function bundle(source: string, file: string, format: 'es' | 'cjs'): EnvironmentOptions {
  return {
    consumer: 'server',
    build: {
      outDir: 'dist/desktop',
      emptyOutDir: false,
      target: 'node22',
      rolldownOptions: {
        input: join(import.meta.dirname, source),
        external: 'electron',
        output: { format, entryFileNames: file, codeSplitting: false },
      },
    },
  }
}

/**
 * Main and preload of the desktop host, one file each. Main is bundled so that it does not depend on what the Node
 * inside Electron makes of TypeScript; packages stay outside it. The preload is CommonJS and holds all it needs, because
 * a sandboxed one can be no module and can load none.
 *
 * `import.meta.url` becomes that of `dist/desktop/main.js`: as deep below the root as every `electron/FOLDER/file.ts`,
 * so `../../specs` still leads to the same place, while `./file` does not.
 */
export default defineConfig({
  root,
  publicDir: false,
  environments: {
    main: { ...bundle('main.ts', 'main.js', 'es'), resolve: { external: true } },
    preload: { ...bundle('preload.ts', 'preload.cjs', 'cjs'), resolve: { noExternal: true } },
  },
  builder: {
    async buildApp(builder) {
      for (const environment of [builder.environments.main, builder.environments.preload])
        if (environment !== undefined) await builder.build(environment)
    },
  },
})
