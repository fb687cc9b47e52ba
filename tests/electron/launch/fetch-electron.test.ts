import { createServer, type RequestListener, type Server } from 'node:http'
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { type AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { textIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { findElectron } from '../../../electron/launch/electron-binary.ts'
import { fetchElectron, lastFailure, megabytes } from '../../../electron/launch/fetch-electron.ts'

/** Why Electron could not be fetched, as it is shown. */
async function failure(env: NodeJS.ProcessEnv = process.env) {
  const why = await fetchElectron(root, env)
  return why && textIn(en, en.phrases, why)
}

let root: string
let folder: string
const servers: Server[] = []

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'electron-'))
  folder = join(root, 'node_modules/electron')
  mkdirSync(folder, { recursive: true })
  install('45.4.1', 'process.exit(1)')
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(() => {
  vi.restoreAllMocks()
  rmSync(root, { recursive: true })
  for (const server of servers.splice(0)) {
    server.closeAllConnections()
    server.close()
  }
})

function install(version: string, installer: string): void {
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ version }))
  writeFileSync(join(folder, 'install.js'), installer)
}

async function serve(listener: RequestListener): Promise<string> {
  const server = createServer(listener)
  servers.push(server)
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', () => resolve()))
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}`
}

const unpacks = `
  const fs = require('node:fs')
  fs.mkdirSync(__dirname + '/dist')
  fs.writeFileSync(__dirname + '/dist/electron', '')
  fs.writeFileSync(__dirname + '/dist/version', '45.4.1')
  fs.writeFileSync(__dirname + '/path.txt', 'electron')
`
/** As Electron's own installer does it: what \`fetch\` throws is printed without its cause. */
const fetches = (address: string) =>
  `fetch('${address}').then((answer) => { if (!answer.ok) throw new Error('Response code') }).catch((error) => { console.error(error.stack); process.exit(1) })`

describe('fetching Electron', () => {
  it('leaves the program, and nothing else', async () => {
    install('45.4.1', unpacks)
    expect(await fetchElectron(root, process.env)).toBeUndefined()
    expect(findElectron(root, undefined)).toEqual({ kind: 'there', binary: join(folder, 'dist/electron') })
    expect(lastFailure(root)).toBeUndefined()
    expect(existsSync(join(root, 'dist/electron-download'))).toBe(false)
  })

  it('is not noted as tried before it has failed', async () => {
    const note = join(root, 'dist/electron-failed.json')
    install('45.4.1', `process.exit(require('node:fs').existsSync('${note}') ? 3 : 4)`)
    expect(await failure()).toBe('its installer ended with 4 and left no program behind')
    expect(existsSync(note)).toBe(true)
  })

  it('keeps the reason of a failure until another version is wanted', async () => {
    install('45.4.1', `console.error('Error: no room on the disk\\n    at somewhere'); process.exit(1)`)
    expect(await failure()).toBe('Error: no room on the disk')
    expect(lastFailure(root)).toEqual({
      code: 'installerPrinted',
      facts: { line: 'Error: no room on the disk' },
    })
    install('45.4.2', '')
    expect(lastFailure(root)).toBeUndefined()
  })

  it('forgets a failure when it succeeds', async () => {
    await fetchElectron(root, process.env)
    expect(lastFailure(root)).toBeDefined()
    install('45.4.1', unpacks)
    await fetchElectron(root, process.env)
    expect(lastFailure(root)).toBeUndefined()
  })

  it('says who could not be reached, and why, where the installer says "fetch failed"', async () => {
    const address = await serve((_, answer) => answer.end())
    servers.splice(0).forEach((server) => server.close())
    install('45.4.1', fetches(address))
    expect(await failure()).toMatch(
      new RegExp(`^${address.slice('http://'.length)} cannot be reached: .*ECONNREFUSED`),
    )
  })

  it('says what was answered', async () => {
    install('45.4.1', fetches(await serve((_, answer) => answer.writeHead(403).end())))
    expect(await failure()).toMatch(/^127\.0\.0\.1:\d+ answered 403$/)
  })

  it('goes through the proxy that only npm has in its settings', async () => {
    const addresses: (string | undefined)[] = []
    const proxy = await serve((_, answer) => answer.writeHead(500).end())
    servers.at(-1)?.on('connect', (request, socket) => {
      addresses.push(request.url)
      socket.end('HTTP/1.1 407 Proxy Authentication Required\r\n\r\n')
    })
    install('45.4.1', fetches('https://downloads.invalid/electron.zip'))
    const proxies = /^(https?|no)_proxy$/i
    const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !proxies.test(name)))
    const why = await failure({ ...env, npm_config_proxy: proxy })
    expect(addresses).toEqual(['downloads.invalid:443'])
    expect(why).toMatch(/^downloads\.invalid cannot be reached: .*407/)
  })
})

describe('a note of an earlier version, which held a sentence', () => {
  it.each([
    ['nothing arrived for 20 s', 'nothingArrived'],
    ['github.com answered 403', 'serverAnswered'],
    ['github.com cannot be reached: getaddrinfo ENOTFOUND github.com', 'serverNotReached'],
    ['its installer ended with 4 and left no program behind', 'installerLeftNothing'],
    ['its installer ended with a signal and left no program behind', 'installerLeftNothing'],
    ['Error: no room on the disk', 'installerPrinted'],
  ])('is read as code and facts, and says the same: %s', (why, code) => {
    mkdirSync(join(root, 'dist'))
    writeFileSync(join(root, 'dist/electron-failed.json'), JSON.stringify({ version: '45.4.1', why }))
    const phrase = lastFailure(root)
    expect(phrase?.code).toBe(code)
    expect(phrase && textIn(en, en.phrases, phrase)).toBe(why)
  })
})

describe('what has arrived', () => {
  it('is said in decimal megabytes', () => {
    expect([0, 43_400_000, 112_600_000].map(megabytes)).toEqual([0, 43, 113])
  })
})
