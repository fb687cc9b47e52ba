import type { IpcMain, IpcMainInvokeEvent } from 'electron'
import { EventEmitter } from 'node:events'
import { answers } from './outside.ts'
import { strict } from './strict.ts'
import { contentsOf } from './windows.ts'

type Handler = Parameters<IpcMain['handle']>[1]

const handlers = new Map<string, Handler>()

/** lib/browser/ipc-main-impl.ts */
export const ipcMain: Pick<IpcMain, 'handle' | 'removeHandler' | 'on'> = strict(
  'ipcMain',
  Object.assign(new EventEmitter(), {
    handle(channel: string, handler: Handler): void {
      if (handlers.has(channel)) throw new Error(`Attempted to register a second handler for '${channel}'`)
      if (typeof handler !== 'function')
        throw new TypeError(`Expected handler to be a function, but found type '${typeof handler}'`)
      handlers.set(channel, handler)
    },
    removeHandler(channel: string): void {
      handlers.delete(channel)
    },
  }) as unknown as Pick<IpcMain, 'handle' | 'removeHandler' | 'on'>,
)

/** lib/browser/ipc-dispatch.ts: an error leaves everything behind but its words. */
answers.invoke = async ({ window, channel, args, frame }) => {
  const handler = handlers.get(channel)
  if (handler === undefined) return { error: `Error: No handler registered for '${channel}'` }
  const event = {
    type: 'frame',
    sender: contentsOf(window),
    // Null where the frame has gone, or gone elsewhere, since it asked: docs/api/structures/ipc-main-invoke-event.md
    senderFrame: frame === null ? null : { url: frame.url, parent: frame.isMain ? null : {} },
    preventDefault: () => undefined,
  } as unknown as IpcMainInvokeEvent
  try {
    return { result: structuredClone((await handler(event, ...args)) as unknown) }
  } catch (error) {
    console.error(`Error occurred in handler for '${channel}':`, error)
    return { error: String(error) }
  }
}
