import type { CDPSession, Download, Frame, Page, Route } from '@playwright/test'
import type { PrintToPDFOptions } from 'electron'
import { randomUUID } from 'node:crypto'
import { statSync } from 'node:fs'
import { Script } from 'node:vm'
import type { LoadFailure, MadeWindow, WindowEvent } from '../questions.ts'
import { makeCodec } from './codec.ts'
import type { Note, Surface, ToProgram } from './surface.ts'
import { asFunction, pageWorldText, preloadWorldText } from './worlds.ts'

const world = 'Electron Isolated Context'
const suffix = '.stand-in'
const { encode, decode } = makeCodec()

/** Chromium cannot be taught a scheme from outside; `https` is the nearest: standard, secure, with an origin. */
function outward(url: string): string {
  return url.replace(
    /^([a-z][a-z0-9+.-]*):\/\/([^/]*)/,
    (_, scheme: string, host: string) => `https://${host}.${scheme}${suffix}`,
  )
}

function inward(url: string): string {
  const [, host, scheme, rest] = /^https:\/\/(.+)\.([a-z][a-z0-9+-]*)\.stand-in(.*)$/.exec(url) ?? []
  return scheme === undefined ? url : `${scheme}://${host}${rest}`
}

interface Context {
  readonly id: number
  readonly auxData: { readonly frameId: string }
}

/**
 * A window in a page of a real Chromium: answers the own scheme with what main answers, runs the real preload in a world of
 * its own, and carries requests, permissions, downloads and the end of the renderer over to main.
 */
/** A call of the preload for an answer of the program. */
interface Invocation {
  id: number
  channel: string
  args: string
}

export class ChromiumSurface implements Surface {
  #page: Page
  #made: MadeWindow | null = null
  #program: ToProgram | null = null
  #note: Note = () => undefined
  #undo: (() => unknown)[] = []
  #isLoading = false
  #hasCrashed = false
  #lastUrl = 'about:blank'
  #lastDownload = 0
  /** What is wrong with the preload, which every load then goes without. */
  #preloadFault: string | null = null

  constructor(page: Page) {
    this.#page = page
  }

  /** The page as it is now: after a crash the window goes on in a new one. */
  get page(): Page {
    return this.#page
  }

  async open(made: MadeWindow, program: ToProgram, note: Note): Promise<void> {
    await this.close()
    this.#made = made
    this.#program = program
    this.#note = note
    await this.#setUp()
  }

  async load(url: string): Promise<LoadFailure | null> {
    if (this.#hasCrashed) await this.#goOnInNewPage()
    this.#lastUrl = url
    this.#isLoading = true
    if (this.#preloadFault !== null)
      this.#tell({ event: 'preload-error', path: 'preload', message: this.#preloadFault })
    try {
      await this.#page.goto(outward(url))
      return null
    } catch (error) {
      return { code: -2, text: /ERR_\w+/.exec(String(error))?.[0] ?? 'ERR_FAILED' }
    } finally {
      this.#isLoading = false
    }
  }

  async reload(): Promise<void> {
    await this.load(this.#lastUrl)
  }

  async crash(): Promise<void> {
    const cdp = await this.#page.context().newCDPSession(this.#page)
    await cdp.send('Page.crash').catch(() => undefined) // the page that would answer has gone
  }

  async pdf({ printBackground, preferCSSPageSize, pageSize }: PrintToPDFOptions): Promise<Uint8Array> {
    return this.#page.pdf({
      ...(printBackground === undefined ? {} : { printBackground }),
      ...(preferCSSPageSize === undefined ? {} : { preferCSSPageSize }),
      ...(typeof pageSize === 'string' ? { format: pageSize } : {}),
    })
  }

  async close(): Promise<void> {
    this.#program = null
    for (const undo of this.#undo.splice(0)) await Promise.resolve(undo()).catch(() => undefined)
    if (this.#made === null || this.#page.isClosed() || this.#hasCrashed) return
    this.#made = null
    await this.#page.goto('about:blank').catch(() => undefined)
  }

  /** Playwright does nothing more with a page whose process has gone. */
  async #goOnInNewPage(): Promise<void> {
    const old = this.#page
    this.#page = await old.context().newPage()
    this.#hasCrashed = false
    this.#undo = []
    await this.#setUp()
    await old.close()
  }

  async #setUp(): Promise<void> {
    const page = this.#page
    const cdp = await page.context().newCDPSession(page)
    const name = randomUUID()
    const binding = `tell${name.replaceAll('-', '')}`
    const contexts = new Map<number, Context>()
    cdp.on('Runtime.executionContextCreated', ({ context }) => contexts.set(context.id, context as never))
    cdp.on('Runtime.bindingCalled', ({ name: called, payload, executionContextId }) => {
      const context = contexts.get(executionContextId)
      if (called === binding && context !== undefined)
        this.#called(cdp, binding, payload, context).catch(() => undefined)
    })
    cdp.on('Page.lifecycleEvent', ({ name: what }) => {
      if (what === 'firstPaint') this.#tell({ event: 'first-paint' })
      if (what === 'load') this.#tell({ event: 'loaded' })
    })
    await Promise.all([
      cdp.send('Page.enable'),
      cdp.send('Runtime.enable'),
      cdp.send('Page.setLifecycleEventsEnabled', { enabled: true }),
      cdp.send('Runtime.addBinding', { name: binding, executionContextName: world }),
      cdp.send('Page.addScriptToEvaluateOnNewDocument', { source: pageWorldText(name) }),
    ])
    const preload = this.#preload()
    if (preload !== null)
      await cdp.send('Page.addScriptToEvaluateOnNewDocument', {
        source: preloadWorldText(name, binding, preload),
        worldName: world,
      })
    this.#undo.push(() => cdp.detach()) // takes its scripts and its binding along
    await this.#listen(page)
  }

  async #listen(page: Page): Promise<void> {
    const navigated = (frame: Frame): void => {
      if (frame === page.mainFrame()) this.#tell({ event: 'navigated', url: inward(frame.url()) })
    }
    const crashed = (): void => {
      this.#hasCrashed = true
      this.#note('crashed', {})
      this.#tell({ event: 'render-process-gone', details: { reason: 'crashed', exitCode: 133 } })
    }
    const download = (started: Download): void => void this.#download(started).catch(() => undefined)
    const route = (each: Route): void => void this.#route(each).catch(() => undefined)
    const all = (): boolean => true
    page.on('framenavigated', navigated).on('crash', crashed).on('download', download)
    this.#undo.push(() =>
      page.off('framenavigated', navigated).off('crash', crashed).off('download', download),
    )
    await page.route(all, route)
    this.#undo.push(() => page.unroute(all, route))
  }

  #tell(event: WindowEvent): void {
    if (this.#made !== null) this.#program?.tell('window-event', { window: this.#made.window, ...event })
  }

  /** The preload, if it can be the body of a function; one that cannot is reported, as Electron does. */
  #preload(): string | null {
    const preload = this.#made?.preload ?? null
    if (preload === null) return null
    try {
      new Script(`(${asFunction(preload)})`)
      return preload
    } catch (error) {
      this.#preloadFault = String(error)
      return null
    }
  }

  async #route(route: Route): Promise<void> {
    const program = this.#program
    const request = route.request()
    const url = inward(request.url())
    if (program === null || this.#made === null) return route.abort()
    const isMainFrame = request.frame() === this.#page.mainFrame()
    // What main itself loads is not asked about: docs/api/web-contents.md, `will-navigate`
    if (request.isNavigationRequest() && !(this.#isLoading && isMainFrame)) {
      const window = this.#made.window
      if (!(await program.ask('may-navigate', { window, url, isMainFrame }))) {
        this.#note('stayed', { url })
        return route.abort('aborted')
      }
    }
    if (!request.url().includes(suffix)) {
      this.#note('not-fetched', { url })
      return route.abort()
    }
    const answer = await program.ask('fetch', {
      url,
      method: request.method(),
      headers: await request.allHeaders(),
    })
    if ('error' in answer) return route.abort()
    const headers = Object.fromEntries(
      Object.entries(answer.headers).map(([key, values]) => [key, values.join(', ')]),
    )
    await route.fulfill({ status: answer.status, headers, body: Buffer.from(answer.body) })
  }

  async #called(cdp: CDPSession, binding: string, text: string, context: Context): Promise<void> {
    const program = this.#program
    if (program === null || this.#made === null) return
    const { window } = this.#made
    const evaluate = (expression: string): Promise<unknown> =>
      cdp.send('Runtime.evaluate', { expression, contextId: context.id }).catch(() => undefined)
    const payload = JSON.parse(text) as { may: string } | { failed: string } | Invocation
    if ('failed' in payload)
      return this.#tell({ event: 'preload-error', path: 'preload', message: payload.failed })
    if ('may' in payload) {
      const may = await program.ask('may-have', { window, permission: payload.may, how: 'request' })
      this.#note('permission', { permission: payload.may, granted: may })
      return void (await evaluate(`${binding}May(${JSON.stringify(String(may))})`))
    }
    const { id, channel } = payload
    const args = decode(payload.args) as readonly unknown[]
    // Only the page itself has a preload's world: worlds.ts leaves frames within it alone.
    const frame = { url: inward(this.#page.mainFrame().url()), isMain: true }
    const answer = await program.ask('invoke', { window, channel, args, frame })
    const reply = JSON.stringify(
      'error' in answer ? { id, error: answer.error } : { id, result: encode(answer.result) },
    )
    await evaluate(`${binding}Answer(${JSON.stringify(reply)})`)
  }

  async #download(started: Download): Promise<void> {
    const program = this.#program
    if (program === null || this.#made === null) return
    const id = ++this.#lastDownload
    const file = await started.path().catch(() => null)
    const about = {
      window: this.#made.window,
      id,
      url: inward(started.url()),
      name: started.suggestedFilename(),
      size: file === null ? 0 : statSync(file).size,
    }
    const path = await program.ask('download', about)
    const state = path === null ? 'cancelled' : await saved(started, path)
    await program.ask('downloaded', { id, state })
    this.#note('downloaded', { path, state, name: about.name })
  }
}

async function saved(download: Download, path: string): Promise<'completed' | 'interrupted'> {
  try {
    await download.saveAs(path)
    return 'completed'
  } catch {
    return 'interrupted'
  }
}
