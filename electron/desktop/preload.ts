import { contextBridge, ipcRenderer } from 'electron'
import { channel } from './channel.ts'
import { requestNames } from './request-names.ts'

/** All that a page of ours can reach of the host. */
contextBridge.exposeInMainWorld(
  'bedplate',
  Object.freeze({
    /** Input and answer are JSON text: a text crosses the bridge as it is, whatever it was made from. */
    request: (name: string, inputText: string): Promise<unknown> =>
      requestNames.includes(name)
        ? ipcRenderer.invoke(channel, name, inputText)
        : Promise.reject(new Error('this host has no such request')),
  }),
)
