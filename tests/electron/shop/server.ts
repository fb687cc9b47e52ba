import { execFileSync, spawn, spawnSync, type ChildProcess } from 'node:child_process'
import { chmodSync, existsSync, globSync, mkdtempSync, readlinkSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as delay } from 'node:timers/promises'
import postgres from 'postgres'

/** PostgreSQL, started for the tests in a folder of its own, and listening on a socket there and on a port of its own choosing. */
export interface TestServer {
  /** Where its socket lies. */
  readonly folder: string
  readonly port: number
  readonly password: string
  /** An address of its owner’s, with the password, by the socket. */
  readonly address: (database: string) => string
  /** Files of the authority that issued its certificate, for the name localhost alone, and of another one. */
  readonly authority: string
  readonly otherAuthority: string
  createDatabase(name: string): Promise<void>
  /** Ends the server and all that serve its connections at once, as a power cut does. */
  kill(): Promise<void>
  start(): Promise<void>
  stop(): Promise<void>
}

/** Where Debian and most others put its programs. */
const programs = globSync('/usr/lib/postgresql/*/bin').toSorted()
const bin = process.env['BEDPLATE_POSTGRESQL'] ?? programs.at(-1)

/** Why there is no server to test against; null where there is one. */
export function noServer(): string | null {
  if (bin === undefined || !existsSync(join(bin, 'initdb')))
    return 'PostgreSQL is not installed here (Debian: apt install postgresql); BEDPLATE_POSTGRESQL names the folder of its programs elsewhere'
  if (isRoot && !existsSync('/usr/bin/setpriv'))
    return 'PostgreSQL does not run as root, and setpriv, which starts it as another user, is not here'
  if (spawnSync('openssl', ['version']).status !== 0)
    return 'openssl is not here, which issues the certificates of the test'
  return null
}

/** It refuses to run as root; `nobody` is there on every system. */
const isRoot = process.getuid?.() === 0
const nobody = isRoot ? ['--reuid=nobody', '--regid=nogroup', '--clear-groups'] : []
/** A server does not outlive the thread that started it, however that ends. */
const setpriv = existsSync('/usr/bin/setpriv') ? ['setpriv', '--pdeathsig=INT', ...nobody] : []

function commandOf(program: string, ...args: readonly string[]): readonly [string, readonly string[]] {
  const [command = '', ...rest] = [...setpriv, join(bin ?? '', program), ...args]
  return [command, rest]
}

export function runProgram(
  program: string,
  env: Readonly<Record<string, string>>,
  ...args: readonly string[]
): void {
  const [command, all] = commandOf(program, ...args)
  execFileSync(command, all, { stdio: ['ignore', 'ignore', 'pipe'], env: { ...process.env, ...env } })
}

/** Settings for speed that take nothing from a server that is killed: it is the machine that must not lose power. */
const settings = ['fsync=off', 'shared_buffers=32MB', 'max_connections=130', 'listen_addresses=127.0.0.1']

export async function startServer(more: readonly string[] = []): Promise<TestServer> {
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-pg-'))
  const password = 'owner-secret'
  const data = join(folder, 'data')
  writeFileSync(join(folder, 'pw'), password)
  const authority = issueCertificates(folder)
  if (isRoot) {
    execFileSync('chown', ['-R', 'nobody', folder])
    chmodSync(folder, 0o755)
  }
  runProgram(
    'initdb', {}, '-D', data, '-U', 'owner', '--auth=scram-sha-256', `--pwfile=${join(folder, 'pw')}`, '-E', 'UTF8', '--locale=C', '--no-sync', '--no-instructions',
  ) // prettier-ignore
  const tls = [
    'ssl=on',
    `ssl_cert_file=${join(folder, 'server.pem')}`,
    `ssl_key_file=${join(folder, 'server.key')}`,
  ]
  const port = 20_000 + (process.pid % 20_000)
  let running: ChildProcess | null = null
  const address = (database: string) =>
    `postgres://owner:${password}@/${database}?host=${encodeURIComponent(folder)}&port=${port}`

  const asOwner = async (statement: string, database = 'postgres') => {
    const sql = postgres({
      host: folder,
      port,
      user: 'owner',
      password,
      database,
      max: 1,
      onnotice: () => {},
    })
    try {
      await sql.unsafe(statement)
    } finally {
      await sql.end({ timeout: 1 })
    }
  }
  const server: TestServer = {
    folder,
    port,
    password,
    address,
    authority,
    otherAuthority: join(folder, 'other-ca.pem'),
    createDatabase: (name) => asOwner(`CREATE DATABASE ${name}`),
    async kill() {
      const all = processesOf(data)
      for (const pid of all) killOne(pid)
      while (processesOf(data).length > 0) await delay(20)
      rmSync(join(data, 'postmaster.pid'), { force: true })
      running = null
    },
    async start() {
      const options = [...settings, `unix_socket_directories=${folder}`, ...tls, ...more].flatMap((each) => [
        '-c',
        each,
      ])
      const [command, args] = commandOf('postgres', '-D', data, '-p', String(port), ...options)
      running = spawn(command, args, { stdio: 'ignore' })
      for (let tries = 0; ; tries += 1) {
        const answers = await asOwner('SELECT 1').then(
          () => true,
          () => false,
        )
        if (answers) return
        if (tries > 600) throw new Error('PostgreSQL does not start')
        await delay(50)
      }
    },
    async stop() {
      running?.kill('SIGINT')
      if (running !== null && running.exitCode === null)
        await new Promise((resolve) => running?.once('exit', resolve))
      rmSync(folder, { recursive: true, force: true })
    },
  }
  await server.start()
  return server
}

/** An authority, a certificate of it for the name localhost, and another authority. Answers the file of the first. */
function issueCertificates(folder: string): string {
  const openssl = (...args: readonly string[]) =>
    execFileSync('openssl', args, { cwd: folder, stdio: 'ignore' })
  const key = ['-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:prime256v1', '-noenc', '-days', '2']
  for (const name of ['ca', 'other-ca'])
    openssl('req', '-x509', ...key, '-keyout', `${name}.key`, '-out', `${name}.pem`, '-subj', `/CN=${name}`)
  const about = [
    '-subj',
    '/CN=server',
    '-addext',
    'subjectAltName=DNS:localhost',
    '-addext',
    'basicConstraints=CA:FALSE',
  ]
  openssl(
    'req',
    '-x509',
    ...key,
    '-CA',
    'ca.pem',
    '-CAkey',
    'ca.key',
    '-keyout',
    'server.key',
    '-out',
    'server.pem',
    ...about,
  )
  return join(folder, 'ca.pem')
}

function killOne(pid: number): void {
  try {
    process.kill(pid, 'SIGKILL')
  } catch {
    // it has ended by itself
  }
}

/** The server’s process and its children: they alone work in this folder. */
function processesOf(data: string): readonly number[] {
  return globSync('/proc/[0-9]*').flatMap((folder) => {
    try {
      return readlinkSync(`${folder}/cwd`) === data ? [Number(folder.split('/')[2])] : []
    } catch {
      return [] // it has ended meanwhile, or is another user's
    }
  })
}
