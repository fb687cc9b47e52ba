import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build, preview } from 'vite'
import { guardHeaders } from '../electron/pages/index.ts'

const configFile = join(import.meta.dirname, '../vite.config.ts')

/** Builds the gallery and serves it while the work is done, under the policy that the program's own pages are under. */
export async function withGallery<Result>(work: (address: string) => Promise<Result>): Promise<Result> {
  const outDir = await mkdtemp(join(tmpdir(), 'bedplate-gallery-'))
  const common = { configFile, mode: 'gallery', logLevel: 'error' } as const
  await build({ ...common, build: { outDir, chunkSizeWarningLimit: 5000 } })
  const server = await preview({
    ...common,
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, headers: { ...guardHeaders } },
  })
  try {
    return await work(server.resolvedUrls!.local[0]!)
  } finally {
    await server.close()
    await rm(outDir, { recursive: true, force: true })
  }
}
