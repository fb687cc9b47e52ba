import { startLocalHost } from '../../../electron/local/server.ts'
import { newToken } from '../../../electron/local/token.ts'

// Serves an empty page as the local host serves its own: what starting a Node, a Chromium and a window takes by itself.
const bytes = Buffer.from('<!doctype html><title>Empty</title><canvas></canvas>')
const host = await startLocalHost({
  pages: new Map([['/', { type: 'text/html; charset=utf-8', bytes }]]),
  answer: () => Promise.reject(new Error('an empty page asks for nothing')),
  token: newToken(),
})
process.once('SIGTERM', () => process.exit())
console.log(`Bedplate is at ${host.address}`)
