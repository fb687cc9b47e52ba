import { protocol } from 'electron'
import { guardHeaders, pageAt } from '../pages/index.ts'
import type { Pages } from '../pages/index.ts'
import { pathOf, scheme } from './window/window-rules.ts'

/** Serves the window's files on the own scheme, out of the map made at start; nothing is opened by an address. */
export function servePages(pages: Pages): void {
  protocol.handle(scheme, ({ url, method }) => pageAnswer(pages, method, url))
}

function pageAnswer(pages: Pages, method: string, url: string): Response {
  const path = pathOf(url)
  const page = method === 'GET' && path !== null ? pageAt(pages, path) : null
  if (page === null) return new Response(null, { status: 404, headers: guardHeaders })
  return new Response(new Uint8Array(page.bytes), { headers: { ...guardHeaders, 'content-type': page.type } })
}
