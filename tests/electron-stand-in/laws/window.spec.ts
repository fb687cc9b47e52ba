import { expect } from '@playwright/test'
import type { SeenEntry } from '../questions.ts'
import { BlankSurface } from '../page/surface.ts'
import { testLaw, type Trial } from './trial.ts'

function rolesOf(entries: readonly SeenEntry[]): readonly string[] {
  return entries.flatMap(({ role, submenu = [] }) => [
    ...(role === undefined ? [] : [role]),
    ...rolesOf(submenu),
  ])
}

testLaw('menu-makes-keys', {
  async seen(trial) {
    const { program } = await trial.shown()
    const { entries } = await program.log.next('menu')
    const roles = rolesOf((entries ?? []) as readonly SeenEntry[]).map((role) => role.toLowerCase())
    const wanted = [
      'cut',
      'copy',
      'paste',
      'selectall',
      'zoomin',
      'zoomout',
      'resetzoom',
      'togglefullscreen',
      'quit',
    ]
    return {
      missing: wanted.filter((role) => !roles.includes(role)),
      unwanted: roles.filter((role) =>
        ['reload', 'forcereload', 'toggledevtools', 'viewmenu'].includes(role),
      ),
    }
  },
  kept: { missing: [], unwanted: [] },
  broken: [{ text: 'Menu.buildFromTemplate(applicationMenu(process.platform))', becomes: 'null' }],
})

testLaw('no-context-menu', {
  async seen(trial) {
    const started = await trial.shown()
    const { line, log } = started.program
    const menus: (readonly string[])[] = []
    for (const params of [
      { isEditable: true, selectionText: '' },
      { isEditable: false, selectionText: '24 N·m' },
      { isEditable: false, selectionText: '' },
    ]) {
      const before = log.all('context-menu').length
      await line.ask('window-event', { window: 1, event: 'context-menu', params })
      await trial.request(started, 'host.read') // answered after what the click set off
      const [made] = log.all('context-menu').slice(before)
      menus.push(rolesOf((made?.entries ?? []) as readonly SeenEntry[]))
    }
    return menus
  },
  kept: [expect.arrayContaining(['cut', 'copy', 'paste', 'selectAll']), ['copy'], []],
  broken: [{ text: 'window.webContents.on("context-menu",', becomes: 'window.webContents.on("destroyed",' }],
})

/** Ends the renderer twice, and has the person close the program when they are asked. */
async function crashTwice(trial: Trial): Promise<unknown> {
  trial.standIn.person.press = (_message, buttons) => buttons.length - 1
  const { program, ended } = await trial.shown()
  const { log } = program
  await trial.surface.crash()
  const again = await trial.soon(log.next('load', 1))
  await trial.surface.crash()
  const box = await trial.soon(log.next('message-box'))
  return {
    loadedAgain: again !== 'nothing',
    asked: box !== 'nothing' && /http:\/\/127\.0\.0\.1:\d+/.test(String(box.detail)),
    ended: await trial.soon(ended),
  }
}

testLaw('page-gone', {
  seen: crashTwice,
  kept: { loadedAgain: true, asked: true, ended: { code: 0, signal: null } },
  broken: [{ text: 'contents.on("render-process-gone",', becomes: 'contents.on("destroyed",' }],
})

testLaw('page-not-loaded', {
  async seen(trial) {
    trial.standIn.person.press = (_message, buttons) => buttons.length - 1
    if (trial.surface instanceof BlankSurface) trial.surface.does = 'fails'
    const { program, ended } = await trial.start()
    const box = await trial.soon(program.log.next('message-box'))
    return {
      loads: program.log.all('load').length,
      shown: program.log.all('shown').length,
      asked: box !== 'nothing',
      ended: await trial.soon(ended),
    }
  },
  kept: { loads: 2, shown: 1, asked: true, ended: { code: 0, signal: null } },
  broken: [{ text: 'contents.on("did-fail-load",', becomes: 'contents.on("destroyed",' }],
})

testLaw('sender-may-be-gone', {
  async seen(trial) {
    const started = await trial.shown()
    const from = async (frame: { url: string; isMain: boolean } | null): Promise<unknown> => {
      const answer = await trial.request(started, 'host.read', {}, frame)
      return typeof answer === 'string' ? answer : answer.ok
    }
    return [
      await from({ url: 'bedplate://app/index.html', isMain: true }),
      await from(null),
      await from({ url: 'bedplate://app/index.html', isMain: false }),
      await from({ url: 'https://example.com/', isMain: true }),
    ]
  },
  kept: [true, false, false, false],
  broken: [{ text: 'return senderFrame !== null && ', becomes: 'return ' }],
})

testLaw('permissions-granted', {
  async seen(trial) {
    const { program } = await trial.shown()
    const may = (permission: string, how: 'request' | 'check' | 'device'): Promise<boolean> =>
      program.line.ask('may-have', { window: 1, permission, how })
    return [
      await may('fullscreen', 'request'),
      await may('geolocation', 'request'),
      await may('screen-wake-lock', 'check'),
      await may('media', 'check'),
      await may('usb', 'device'),
    ]
  },
  kept: [true, false, true, false, false],
  broken: [{ text: 'session.setPermissionCheckHandler(', becomes: 'void (' }],
})

testLaw('serial-lines-unchosen', {
  async seen(trial) {
    const { program } = await trial.shown()
    const lines = [
      { portId: 'own', portName: 'ttyS0' },
      { portId: 'gauge', portName: 'ttyUSB0', displayName: 'Gauge', vendorId: '1027', serialNumber: 'G7' },
    ]
    const mayOpen = (name: string, serial_number: string, origin = 'bedplate://app'): Promise<boolean> =>
      program.line.ask('may-open-serial', { device: { name, serial_number }, origin })
    const before = await mayOpen('Gauge', 'G7')
    // The first button: what is on USB comes first.
    trial.standIn.person.press = () => 0
    const chosen = await program.line.ask('select-serial', { window: 1, lines })
    trial.standIn.person.press = (_message, buttons) => buttons.length - 1
    return [
      before,
      chosen,
      await program.line.ask('select-serial', { window: 1, lines }),
      await mayOpen('Gauge', 'G7'),
      await mayOpen('Gauge', 'G8'),
      await mayOpen('Gauge', 'G7', 'https://example.com'),
    ]
  },
  kept: [false, 'gauge', '', true, false, false],
  broken: [{ text: 'session.on("select-serial-port",', becomes: 'session.on("will-download",' }],
})

testLaw('camera-and-microphone-are-one', {
  async seen(trial) {
    const { program } = await trial.shown()
    const may = (how: 'request' | 'check', ...media: readonly ('audio' | 'video')[]): Promise<boolean> =>
      program.line.ask('may-have', { window: 1, permission: 'media', how, media })
    return [
      await may('request', 'video'),
      await may('check', 'video'),
      await may('request', 'audio'),
      await may('check', 'audio'),
      await may('request', 'audio', 'video'),
    ]
  },
  kept: [true, true, false, false, false],
  broken: [{ text: 'media.length === 1 && media[0] === ', becomes: 'media.length > 0 || media[0] === ' }],
})

testLaw('pages-lead-away', {
  async seen(trial) {
    const { program } = await trial.shown()
    const may = (url: string, isMainFrame: boolean): Promise<boolean> =>
      program.line.ask('may-navigate', { window: 1, url, isMainFrame })
    return [
      await may('bedplate://app/index.html', true),
      await may('https://example.com/', true),
      await may('bedplate://app/index.html', false),
      (await trial.soon(program.log.next('popups'))) !== 'nothing' && program.log.all('popups')[0]?.allowed,
    ]
  },
  kept: [true, false, false, false],
  broken: [{ text: 'refuseLeaving(app);', becomes: '' }],
})
