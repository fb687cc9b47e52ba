import { contextBridge, ipcRenderer } from 'electron'
import { channel } from './channel.ts'
import { requestNames } from './request-names.ts'

/** All that a page of ours can reach of the host. */
contextBridge.exposeInMainWorld(
  'bedplate',
  Object.freeze({
    request: (name: string, input: unknown): Promise<unknown> =>
      requestNames.includes(name)
        ? ipcRenderer.invoke(channel, name, input)
        : Promise.reject(new Error('this host has no such request')),
  }),
)
