import { spawn, type ChildProcess } from 'node:child_process'
import { chownSync, existsSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import { wantedVersion } from '../../electron/launch/electron-binary.ts'
import { isRoot } from '../../electron/launch/display.ts'
import { sandboxFacts, whyNoSandbox } from '../../electron/launch/sandbox.ts'
import { StandIn, type Program } from '../electron-stand-in/page/stand-in.ts'
import { BlankSurface } from '../electron-stand-in/page/surface.ts'
import { en } from '../../core/words/index.ts'
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
    openTo(data, standIn.folder, join(standIn.folder, 'socket'))
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
    const endedTooSoon = ended.then((code) => {
      throw new Error(`the launcher ended with ${code}: ${printed}`)
    })
    endedTooSoon.catch(() => undefined)
    try {
      await use({
        launcher,
        standIn,
        started: () => Promise.race([arrival, endedTooSoon]),
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

/** Lets the ordinary user in, where it is root who made the folder. */
function openTo(...paths: readonly string[]): void {
  if (isRoot()) for (const path of paths) chownSync(path, 65534, 65534)
}

/** Where no program may make a sandbox the launcher tries for no window of Electron's. */
function skipWithoutSandboxes(): void {
  const why = process.platform === 'linux' ? whyNoSandbox(sandboxFacts(process.execPath)) : undefined
  test.skip(why !== undefined, `this machine keeps sandboxes from programs (${String(why)})`)
}

test('npm start opens the desktop host, and one Ctrl+C ends all of it with the record closed', async () => {
  skipWithoutSandboxes()
  await withLaunch({}, async ({ launcher, started, data, printed, ended }) => {
    const program = await started()
    await program.log.next('shown')
    const message = { window: 1, channel: 'bedplate-request', args: ['engines.list', '{}'] }
    await program.line.ask('invoke', {
      ...message,
      frame: { url: 'bedplate://app/index.html', isMain: true },
    })
    expect(printed()).toContain(en.launch.inDesktopHost)

    process.kill(-(launcher.pid ?? 0), 'SIGINT') // every process of the terminal’s group
    expect(await ended).toBe(0)
    expect(program.log.all('ended')).toHaveLength(1)
    expect(existsSync(join(data, 'bedplate.sqlite'))).toBe(true)
    expect(existsSync(join(data, 'bedplate.sqlite-wal'))).toBe(false)
    expect(printed()).not.toContain('local host')
  })
})

test('a desktop host that gives up says why, and the local host takes over', async () => {
  skipWithoutSandboxes()
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

/** Starts the launcher without a window, waits until it ends or serves, and answers with what it printed and its code. */
async function launchedWith(
  words: readonly string[],
  env: Readonly<Record<string, string>>,
): Promise<{ readonly printed: string; readonly code: number | null }> {
  const launcher = spawn(process.execPath, ['electron/launch/main.ts', ...words], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { PATH: process.env.PATH, ...env },
    ...somebody,
  })
  let printed = ''
  for (const stream of [launcher.stdout, launcher.stderr])
    stream.on('data', (chunk: Buffer) => {
      printed += chunk.toString()
      if (/^Bedplate is at /m.test(printed)) launcher.kill('SIGTERM')
    })
  const code = await new Promise<number | null>((resolve) => launcher.once('close', resolve))
  return { printed, code }
}

test('what cannot be opened or kept is said in a sentence, and nothing is started', async () => {
  await withDataFolder(async (folder) => {
    const file = join(folder, 'notes.txt')
    writeFileSync(file, 'a text')
    openTo(folder)
    const outputOf = async (...words: string[]) => launchedWith(['--no-window', ...words], { HOME: folder })
    expect(await outputOf('--data', file)).toEqual({
      printed: expect.stringMatching(
        /Builds cannot be kept at .*notes\.txt: it is a file, or lies within one/,
      ) as unknown,
      code: 1,
    })
    expect(await outputOf('--data', folder, '--specs', file)).toEqual({
      printed: `--specs names ${file}, which is not a folder. Name the one in which the engine specs lie.\n`,
      code: 2,
    })
    const missingFile = join(folder, 'gone.bedplate')
    expect(await outputOf('--data', folder, file, missingFile)).toEqual({
      printed: `${missingFile} is not a file. What can be opened is an exported build (.bedplate) or an engine spec (.json).\n`,
      code: 2,
    })
  })
})

test('a program that is not Electron, or an old one, is named, and the local host runs instead', async () => {
  await withDataFolder(async (folder) => {
    const binary = join(folder, 'electron')
    writeFileSync(binary, '#!/bin/sh\n', { mode: 0o755 })
    openTo(folder)
    const env = { HOME: folder, XDG_DATA_HOME: folder, DISPLAY: ':99', BEDPLATE_ELECTRON: binary, PATH: '' }
    const isNone = await launchedWith(['--data', join(folder, 'one')], env)
    expect(isNone.printed).toContain(
      `Bedplate runs in the local host: BEDPLATE_ELECTRON names ${binary}, which is not Electron: no file “version” lies with it.`,
    )
    writeFileSync(join(folder, 'version'), '28.0.0')
    const isOld = await launchedWith(['--data', join(folder, 'two')], env)
    expect(isOld.printed).toContain(`which is Electron 28.0.0, and Bedplate needs ${wantedVersion(root)}.`)
    for (const { printed, code } of [isNone, isOld]) {
      expect(printed).toContain(en.launch.at({ address: 'http://127.0.0.1:' }))
      expect(code).toBe(0)
    }
  })
})
