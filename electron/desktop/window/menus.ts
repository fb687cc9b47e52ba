import type { ContextMenuParams, MenuItemConstructorOptions } from 'electron'
import { words } from '../../launch/spoken.ts'

/**
 * The program's menu. Keys as for copying, for zooming or for the full screen come from a menu's items: on macOS without an
 * edit menu there is no copying by key at all, and nowhere a zoom without its roles (docs/api/menu-item.md, roles). Reloading
 * and the developer's tools, which Electron's own default has, are not in it.
 */
export function applicationMenu(platform: NodeJS.Platform): MenuItemConstructorOptions[] {
  const isMac = platform === 'darwin'
  const { menus } = words.desktop
  const separator: MenuItemConstructorOptions = { type: 'separator' }
  return [
    ...(isMac
      ? [{ role: 'appMenu' } as const]
      : [{ label: menus.file, submenu: [{ role: 'quit' } as const] }]),
    {
      label: menus.edit,
      submenu: [
        { role: 'undo' },
        { role: 'redo' },
        separator,
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
      ],
    },
    {
      label: menus.view,
      submenu: [
        { role: 'resetZoom' },
        { role: 'zoomIn' },
        // The key of the plus sign without Shift, as browsers take it too.
        {
          role: 'zoomIn',
          accelerator: 'CommandOrControl+=',
          visible: false,
          acceleratorWorksWhenHidden: true,
        },
        { role: 'zoomOut' },
        separator,
        { role: 'togglefullscreen' },
      ],
    },
    { role: 'windowMenu' },
  ]
}

/**
 * What a right click or the menu key offers: editing in a field, copying where words are marked, else nothing. Electron shows
 * no menu of its own (docs/api/web-contents.md, `context-menu`).
 */
export function contextMenu({
  isEditable,
  selectionText,
  editFlags,
}: Pick<ContextMenuParams, 'isEditable' | 'selectionText'> & {
  readonly editFlags: Pick<
    ContextMenuParams['editFlags'],
    'canUndo' | 'canRedo' | 'canCut' | 'canCopy' | 'canPaste' | 'canSelectAll'
  >
}): MenuItemConstructorOptions[] {
  if (isEditable)
    return [
      { role: 'undo', enabled: editFlags.canUndo },
      { role: 'redo', enabled: editFlags.canRedo },
      { type: 'separator' },
      { role: 'cut', enabled: editFlags.canCut },
      { role: 'copy', enabled: editFlags.canCopy },
      { role: 'paste', enabled: editFlags.canPaste },
      { type: 'separator' },
      { role: 'selectAll', enabled: editFlags.canSelectAll },
    ]
  return selectionText.trim() === '' ? [] : [{ role: 'copy', enabled: editFlags.canCopy }]
}
