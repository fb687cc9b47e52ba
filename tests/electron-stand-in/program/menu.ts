import type { Menu as ElectronMenu, MenuItem as ElectronMenuItem, MenuItemConstructorOptions } from 'electron'
import type { SeenEntry } from '../questions.ts'
import { outside } from './outside.ts'
import { strict } from './strict.ts'

/** lib/browser/api/menu-item-roles.ts, roleList */
const roles = new Set(
  'about close copy cut delete forcereload front help hide hideothers minimize paste pasteandmatchstyle quit redo reload resetzoom selectall services recentdocuments clearrecentdocuments showsubstitutions togglesmartquotes togglesmartdashes toggletextreplacement startspeaking stopspeaking toggledevtools togglefullscreen undo unhide window zoom zoomin zoomout togglespellchecker appmenu filemenu editmenu viewmenu windowmenu sharemenu'.split(
    ' ',
  ),
)

type Template = readonly (MenuItemConstructorOptions | ElectronMenuItem)[]

class PlayedMenu implements Pick<ElectronMenu, 'popup'> {
  readonly entries: readonly SeenEntry[]

  constructor(entries: readonly SeenEntry[]) {
    this.entries = entries
  }

  popup(): void {
    outside.tell('context-menu', { entries: this.entries })
  }
}

function entryOf(item: MenuItemConstructorOptions | ElectronMenuItem): SeenEntry {
  if (item.role === undefined && item.label === undefined && item.type !== 'separator')
    throw new TypeError('Invalid template for MenuItem: must have at least one of label, role or type')
  if (item.role !== undefined && !roles.has(item.role.toLowerCase()))
    throw new Error(`stand-in: a menu has no role “${item.role}”`)
  const { role, label, type, accelerator, enabled, submenu } = item as MenuItemConstructorOptions
  const below = Array.isArray(submenu) ? submenu.map(entryOf) : (submenu as PlayedMenu | undefined)?.entries
  const seen = { role, label, type, accelerator, enabled, submenu: below }
  return Object.fromEntries(Object.entries(seen).filter(([, value]) => value !== undefined))
}

/** What was set as the menu of the program; `undefined` until it was, when Electron makes a menu of its own. */
let applicationMenu: PlayedMenu | null | undefined

type Played = 'buildFromTemplate' | 'setApplicationMenu' | 'getApplicationMenu'

export const Menu = strict('Menu', {
  buildFromTemplate(template: Template): PlayedMenu {
    if (!Array.isArray(template))
      throw new TypeError('Invalid template for Menu: Menu template must be an array')
    return strict('menu', new PlayedMenu(template.map(entryOf)))
  },
  setApplicationMenu(menu: PlayedMenu | null): void {
    if (menu !== null && !(menu instanceof PlayedMenu)) throw new TypeError('Invalid menu')
    applicationMenu = menu
    outside.tell('menu', { entries: menu?.entries ?? null })
  },
  getApplicationMenu: (): PlayedMenu | null => applicationMenu ?? null,
} satisfies Record<keyof Pick<typeof ElectronMenu, Played>, unknown>)
