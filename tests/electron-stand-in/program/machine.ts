import type {
  Clipboard,
  Display,
  NativeTheme,
  PowerMonitor,
  PowerSaveBlocker,
  SafeStorage,
  Screen,
  Shell,
} from 'electron'
import { playedApp } from './app.ts'
import { life } from './life.ts'
import { answers, outside } from './outside.ts'
import { eventsOf, PlayedEvents, strict } from './strict.ts'

/** Names the screens of the played machine, as the JSON text of `Rectangle[]`. */
export const screensVariable = 'STAND_IN_SCREENS'

interface Area {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

const areas = JSON.parse(
  process.env[screensVariable] ?? '[{"x":0,"y":0,"width":1920,"height":1080}]',
) as readonly Area[]

function displays(): Display[] {
  // lib/browser/api/screen.ts: made at the first use, which must come after ready.
  if (!life.isReady) throw new Error("The 'screen' module can't be used before the app 'ready' event")
  return areas.map(
    (area, index) =>
      ({ id: index + 1, bounds: { ...area }, workArea: { ...area }, scaleFactor: 1 }) as unknown as Display,
  )
}

function overlap(a: Area, b: Area): number {
  const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return Math.max(0, width) * Math.max(0, height)
}

class PlayedScreen
  extends PlayedEvents
  implements Pick<Screen, 'getAllDisplays' | 'getPrimaryDisplay' | 'getDisplayMatching'>
{
  constructor() {
    super('screen', eventsOf<Screen>()('display-added', 'display-removed', 'display-metrics-changed'))
  }
  getAllDisplays(): Display[] {
    return displays()
  }
  getPrimaryDisplay(): Display {
    return displays()[0] as Display
  }
  getDisplayMatching(rect: Area): Display {
    return displays().reduce((best, each) =>
      overlap(each.bounds, rect) > overlap(best.bounds, rect) ? each : best,
    )
  }
}
export const screen = strict('screen', new PlayedScreen())

class PlayedTheme extends PlayedEvents implements Pick<NativeTheme, 'themeSource' | 'shouldUseDarkColors'> {
  themeSource: NativeTheme['themeSource'] = 'system'
  constructor() {
    super('nativeTheme', eventsOf<NativeTheme>()('updated'))
  }
  get shouldUseDarkColors(): boolean {
    return this.themeSource === 'dark'
  }
}
export const nativeTheme = strict('nativeTheme', new PlayedTheme())

const playedMonitor = new PlayedEvents(
  'powerMonitor',
  eventsOf<PowerMonitor>()('suspend', 'resume', 'shutdown', 'lock-screen', 'unlock-screen'),
)
export const powerMonitor = strict('powerMonitor', playedMonitor)

/** docs/api/power-monitor.md, `shutdown`: unless it is prevented, the system goes on and ends the program. */
answers.power = (event) => {
  const isHeld = playedMonitor.send(event)
  if (event === 'shutdown' && !isHeld) playedApp.exit(0)
}

let lastBlocker = 0
const blockers = new Set<number>()
export const powerSaveBlocker: Pick<PowerSaveBlocker, 'start' | 'stop' | 'isStarted'> = strict(
  'powerSaveBlocker',
  {
    start(_type: Parameters<PowerSaveBlocker['start']>[0]): number {
      blockers.add(++lastBlocker)
      outside.tell('keep-awake', { on: true })
      return lastBlocker
    },
    stop(id: number): boolean {
      const wasOn = blockers.delete(id)
      if (wasOn) outside.tell('keep-awake', { on: false })
      return wasOn
    },
    isStarted: (id: number): boolean => blockers.has(id),
  },
)

export const clipboard: Pick<Clipboard, 'writeText'> = strict('clipboard', {
  writeText: (text: string) => outside.ask('copied', { text }),
})

/** Leads to other programs, so nothing of it may be used. */
export const shell: Pick<Shell, never> = strict('shell', {})

/**
 * A machine without a key ring: shell/browser/api/electron_api_safe_storage.cc. There both calls throw, and throw before ready
 * on any machine.
 */
const noKeyRing = (): never => {
  throw new Error(
    life.isReady ? 'Encryption is not available.' : 'safeStorage cannot be used before app is ready',
  )
}
export const safeStorage: Pick<
  SafeStorage,
  'isEncryptionAvailable' | 'getSelectedStorageBackend' | 'encryptString' | 'decryptString'
> = strict('safeStorage', {
  isEncryptionAvailable: () => false,
  getSelectedStorageBackend: () => (life.isReady ? 'basic_text' : 'unknown'),
  encryptString: noKeyRing,
  decryptString: noKeyRing,
})
