import { makeCodec, type Codec } from './codec.ts'

// What runs in the page, in the page's own world and in the preload's. Handed to Chromium as text, so each function uses
// nothing but its arguments. The worlds talk by events whose details are texts, under a name that no page knows.

export type Preload = (
  require: (id: string) => unknown,
  process: object,
  exports: object,
  module: object,
) => void

/** How the page's world describes what the preload exposed: functions by number, the rest by value. */
type Exposed = { readonly call: number } | ExposedObject | { readonly value: string }

interface ExposedObject {
  readonly members: readonly [string, Exposed][]
}

/**
 * The page's own world: puts there what the preload exposes, as copies, frozen, read-only and for good.
 * shell/renderer/api/electron_api_context_bridge.cc
 */
function pageWorld({ encode, decode }: Codec, name: string): void {
  if (window !== window.top) return
  interface Call {
    readonly resolve: (value: unknown) => void
    readonly reject: (error: Error) => void
    /** Filled in at once by a function that answers without a promise. */
    at_once?: { readonly thrown: string } | { readonly value: unknown }
  }
  const calls = new Map<number, Call>()
  let last = 0
  const hear = (what: string, listener: (detail: string) => void): void =>
    addEventListener(`${name}-${what}`, (event) => listener((event as CustomEvent<string>).detail))
  const say = (what: string, detail: unknown): boolean =>
    dispatchEvent(new CustomEvent(`${name}-${what}`, { detail: JSON.stringify(detail) }))

  /** IsPlainObject refuses a Proxy, and V8's serialiser throws: so does structuredClone. */
  function cloned(value: unknown): unknown {
    try {
      return structuredClone(value)
    } catch {
      throw new Error('An object could not be cloned.')
    }
  }

  function build(exposed: Exposed): unknown {
    if ('value' in exposed) return decode(exposed.value)
    if ('members' in exposed)
      return Object.freeze(Object.fromEntries(exposed.members.map(([key, member]) => [key, build(member)])))
    return Object.freeze((...values: unknown[]) => {
      const args = encode(values.map(cloned))
      const id = ++last
      const call: Partial<Call> = {}
      const promise = new Promise<unknown>((resolve, reject) => Object.assign(call, { resolve, reject }))
      calls.set(id, call as Call)
      say('call', { id, function: exposed.call, args })
      if (call.at_once === undefined) return promise
      if ('thrown' in call.at_once) throw new Error(call.at_once.thrown)
      return call.at_once.value
    })
  }

  hear('expose', (detail) => {
    const { key, exposed } = JSON.parse(detail) as { key: string; exposed: Exposed }
    if (key in window)
      throw new Error('Cannot bind an API on top of an existing property on the window object')
    Object.defineProperty(window, key, { value: build(exposed), enumerable: true })
  })
  hear('answer', (detail) => {
    const { id, how, value } = JSON.parse(detail) as { id: number; how: string; value: string }
    const call = calls.get(id)
    if (call === undefined) return
    if (how !== 'later') calls.delete(id)
    if (how === 'thrown') call.at_once = { thrown: value }
    else if (how === 'value') call.at_once = { value: decode(value) }
    else if (how === 'rejected') call.reject(new Error(value))
    else if (how === 'resolved') call.resolve(decode(value))
  })

  // The whole screen is a permission in Electron: WebContentsPermissionHelper::RequestFullscreenPermission
  const answersToCome: ((may: boolean) => void)[] = []
  hear('may', (detail) => answersToCome.shift()?.(JSON.parse(detail) as boolean))
  // eslint-disable-next-line @typescript-eslint/unbound-method -- it is called on the element it was asked of
  const goFullscreen = Element.prototype.requestFullscreen
  Element.prototype.requestFullscreen = function (options) {
    return new Promise((resolve, reject) => {
      answersToCome.push((may) =>
        may ? resolve(goFullscreen.call(this, options)) : reject(new TypeError('fullscreen error')),
      )
      say('ask', 'fullscreen')
    })
  }
}

/**
 * The preload's world: no Node; `require` of the few modules that lib/sandboxed_renderer/init.ts has; the script run as the
 * body of a function (lib/sandboxed_renderer/preload.ts), so that a module's `import` is an error there as it is here.
 */
function preloadWorld({ encode, decode }: Codec, name: string, tell: string, preload: Preload): void {
  if (window !== window.top) return
  const inHere = globalThis as unknown as Record<string, (text: string) => void>
  const outward = (message: object): void => inHere[tell]?.(JSON.stringify(message))
  const hear = (what: string, listener: (detail: string) => void): void =>
    addEventListener(`${name}-${what}`, (event) => listener((event as CustomEvent<string>).detail))
  const say = (what: string, detail: unknown): boolean =>
    dispatchEvent(new CustomEvent(`${name}-${what}`, { detail: JSON.stringify(detail) }))

  const functions: ((...args: unknown[]) => unknown)[] = []
  function describe(api: unknown): Exposed {
    if (typeof api === 'function') return { call: functions.push(api as never) - 1 }
    if (typeof api === 'object' && api !== null && !Array.isArray(api))
      return { members: Object.entries(api).map(([key, member]) => [key, describe(member)]) }
    return { value: encode(api) }
  }
  hear('call', (detail) => {
    const call = JSON.parse(detail) as { id: number; function: number; args: string }
    const answer = (how: string, value: string): boolean => say('answer', { id: call.id, how, value })
    const words = (error: unknown): string => (error instanceof Error ? error.message : String(error))
    try {
      const result = functions[call.function]?.(...(decode(call.args) as unknown[]))
      if (!(result instanceof Promise)) return void answer('value', encode(result))
      answer('later', '')
      result.then(
        (value) => answer('resolved', encode(value)),
        (error: unknown) => answer('rejected', words(error)),
      )
    } catch (error) {
      answer('thrown', words(error))
    }
  })
  hear('ask', (detail) => outward({ may: JSON.parse(detail) as string }))
  inHere[`${tell}May`] = (text) => void say('may', text === 'true')

  const waiting = new Map<
    number,
    { resolve: (value: unknown) => void; reject: (error: Error) => void; channel: string }
  >()
  let last = 0
  inHere[`${tell}Answer`] = (text) => {
    const { id, error, result } = JSON.parse(text) as { id: number; error?: string; result: string }
    const call = waiting.get(id)
    waiting.delete(id)
    // lib/renderer/api/ipc-renderer.ts
    if (error === undefined) call?.resolve(decode(result))
    else call?.reject(new Error(`Error invoking remote method '${call.channel}': ${error}`))
  }
  const electron = {
    contextBridge: {
      exposeInMainWorld: (key: string, api: unknown): boolean =>
        say('expose', { key, exposed: describe(api) }),
    },
    ipcRenderer: {
      invoke: (channel: string, ...args: unknown[]): Promise<unknown> => {
        const text = encode(structuredClone(args))
        return new Promise((resolve, reject) => {
          waiting.set(++last, { resolve, reject, channel })
          outward({ id: last, channel, args: text })
        })
      },
    },
  }
  const modules: Readonly<Record<string, unknown>> = {
    electron,
    'electron/common': electron,
    'electron/renderer': electron,
    events: {},
    'node:events': {},
    timers: {},
    'node:timers': {},
    url: {},
    'node:url': {},
  }
  const require = (id: string): unknown => {
    if (!Object.hasOwn(modules, id)) throw new Error(`module not found: ${id}`)
    return modules[id]
  }
  try {
    const exports = {}
    const process = { type: 'renderer', sandboxed: true, contextIsolated: true }
    preload(require, process, exports, { exports })
  } catch (error) {
    console.error('Unable to load preload script', error)
    outward({ failed: error instanceof Error ? error.message : String(error) })
  }
}

export function pageWorldText(name: string): string {
  return `(${pageWorld.toString()})((${makeCodec.toString()})(), ${JSON.stringify(name)})`
}

export function preloadWorldText(name: string, tell: string, preload: string): string {
  const parameters = `${JSON.stringify(name)}, ${JSON.stringify(tell)}, ${asFunction(preload)}`
  return `(${preloadWorld.toString()})((${makeCodec.toString()})(), ${parameters})`
}

/** A preload is the body of a function, not a module. It stands in the text itself: the page's policy forbids `eval`. */
export function asFunction(preload: string): string {
  return `function (require, process, exports, module) {\n${preload}\n}`
}
