import { readdirSync, readFileSync } from 'node:fs'
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
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const type = types[extname(entry.name)]
    if (!entry.isFile() || type === undefined) continue
    const file = join(entry.parentPath, entry.name)
    const path = '/' + relative(folder, file).split(sep).join('/')
    pages.set(path, { type, bytes: readFileSync(file) })
  }
  const first = pages.get('/index.html')
  if (first) pages.set('/', first)
  return pages
}

/** The page at an address's path, query and fragment left off; null for none. Nothing is decoded or resolved. */
export function pageAt(pages: Pages, target: string): Page | null {
  const [path = ''] = target.split(/[?#]/, 1)
  return pages.get(path) ?? null
}
