import { lstatSync, readdirSync, readFileSync } from 'node:fs'
import { extname, join, relative, sep } from 'node:path'

/** One file of the window as it is sent. */
export interface Page {
  readonly type: string
  readonly bytes: Buffer
}

/** Every file that can be asked for, by the exact path of its address. What is not in it does not exist. */
export type Pages = ReadonlyMap<string, Page>

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
}

/**
 * Reads the built window once, at start. Later an address is only looked up among these, so that no address, however
 * it is written, leads to another file.
 */
export function readPages(folder: string): Pages {
  const pages = new Map<string, Page>()
  for (const file of filesBelow(folder)) {
    const type = types[extname(file)]
    if (type === undefined) continue
    const path = '/' + relative(folder, file).split(sep).join('/')
    pages.set(path, { type, bytes: readFileSync(file) })
  }
  const first = pages.get('/index.html')
  if (first) pages.set('/', first)
  return pages
}

/**
 * By the plainest calls: Electron puts its own `readdirSync` in the place of Node's, for archives and folders alike, which reads
 * whole trees by members of `Dirent` that come and go with Node (lib/node/asar-fs-wrapper.ts, `readdirSyncRecursive`).
 */
function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name)
    const found = lstatSync(path)
    return found.isDirectory() ? filesBelow(path) : found.isFile() ? [path] : []
  })
}

/** The page at an address's path, query and fragment left off; null for none. Nothing is decoded or resolved. */
export function pageAt(pages: Pages, target: string): Page | null {
  const [path = ''] = target.split(/[?#]/, 1)
  return pages.get(path) ?? null
}
