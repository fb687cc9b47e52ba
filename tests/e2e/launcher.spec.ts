import { spawn, type ChildProcess } from 'node:child_process'
import { chmodSync, chownSync, existsSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import { wantedVersion } from '../../electron/launch/electron-binary.ts'
import { isRoot } from '../../electron/launch/display.ts'
import { sandboxFacts, whyNoSandbox } from '../../electron/launch/sandbox.ts'
import { StandIn, type Program } from '../electron-stand-in/page/stand-in.ts'
import { BlankSurface } from '../electron-stand-in/page/surface.ts'
import { withDataFolder } from './hosts/host.ts'

const root = join(import.meta.dirname, '../..')

/** As root the launcher opens no window; anybody else stands for an ordinary user. */
const somebody = isRoot() ? { uid: 65534, gid: 65534 } : {}

interface Launch {
  readonly launcher: ChildProcess
  readonly standIn: StandIn
  readonly data: string
  /** The desktop host, as soon as it has started. */
  readonly started: () => Promise<Program>
  /** All that the launcher and what it started have printed. */
  readonly printed: () => string
  readonly ended: Promise<number | null>
}

/** The launcher with a stand-in for Electron’s program, in a group of its own as a terminal would have it. */
async function withLaunch(
  { does = 'paints' }: { readonly does?: BlankSurface['does'] },
  use: (launch: Launch) => Promise<void>,
): Promise<void> {
  const surface = new BlankSurface()
  surface.does = does
  const standIn = await StandIn.on(surface)
  await withDataFolder(async (data) => {
    const { binary } = standIn
    writeFileSync(join(standIn.folder, 'version'), wantedVersion(root)) // by this it is known for Electron
    openTo(standIn.folder, data)
    const launcher = spawn(process.execPath, ['electron/launch/main.ts', '--data', join(data, 'record')], {
      cwd: root,
      detached: true,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: {
        PATH: process.env.PATH,
        HOME: data,
        TMPDIR: data,
        XDG_STATE_HOME: join(data, 'state'),
        DISPLAY: ':99',
        BEDPLATE_ELECTRON: binary,
      },
      ...somebody,
    })
    let printed = ''
    for (const stream of [launcher.stdout, launcher.stderr])
      stream.on('data', (chunk: Buffer) => (printed += chunk.toString()))
    const ended = new Promise<number | null>((resolve) => launcher.once('close', resolve))
    const arrival = standIn.arrival()
    const inVain = ended.then((code) => {
      throw new Error(`the launcher ended with ${code}: ${printed}`)
    })
    inVain.catch(() => undefined)
    try {
      await use({
        launcher,
        standIn,
        started: () => Promise.race([arrival, inVain]),
        data: join(data, 'record'),
        printed: () => printed,
        ended,
      })
    } finally {
      if (launcher.exitCode === null) launcher.kill('SIGTERM')
      await ended
      await standIn.close()
    }
  })
}

/** Lets the ordinary user in, where it is root who made the folders. */
function openTo(standIn: string, data: string): void {
  if (!isRoot()) return
  chmodSync(standIn, 0o755)
  chmodSync(join(standIn, 'socket'), 0o777)
  chownSync(data, 65534, 65534)
}

test.beforeEach(() => {
  const why = process.platform === 'linux' ? whyNoSandbox(sandboxFacts(process.execPath)) : undefined
  test.skip(
    why !== undefined,
    `this machine keeps sandboxes from programs (${String(why)}): no window is tried for`,
  )
})

test('npm start opens the desktop host, and one Ctrl+C ends all of it with the record closed', async () => {
  await withLaunch({}, async ({ launcher, started, data, printed, ended }) => {
    const program = await started()
    await program.told.heard('shown')
    const asked = { window: 1, channel: 'bedplate-request', args: ['engines.list', '{}'] }
    await program.line.ask('invoke', { ...asked, frame: { url: 'bedplate://app/index.html', isMain: true } })
    expect(printed()).toContain('Bedplate runs in the desktop host.')

    process.kill(-(launcher.pid ?? 0), 'SIGINT') // every process of the terminal’s group
    expect(await ended).toBe(0)
    expect(program.told.all('ended')).toHaveLength(1)
    expect(existsSync(join(data, 'bedplate.sqlite'))).toBe(true)
    expect(existsSync(join(data, 'bedplate.sqlite-wal'))).toBe(false)
    expect(printed()).not.toContain('local host')
  })
})

test('a desktop host that gives up says why, and the local host takes over', async () => {
  await withLaunch({ does: 'fails' }, async ({ standIn, started, printed, launcher, ended }) => {
    standIn.person.press = (_message, buttons) => buttons.length - 1 // ends the program over a page that cannot be loaded
    const program = await started()
    program.line.tell('quit', null)
    await expect.poll(printed, { timeout: 50_000 }).toMatch(/Bedplate is at http:\/\/127\.0\.0\.1:\d+\/#/)
    expect(printed()).toMatch(
      /Bedplate runs in the local host: Electron ended with 0 before its window was seen\./,
    )
    process.kill(-(launcher.pid ?? 0), 'SIGINT')
    expect(await ended).toBe(0)
  })
})
