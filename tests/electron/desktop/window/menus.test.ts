import { describe, expect, it } from 'vitest'
import { applicationMenu, contextMenu } from '../../../../electron/desktop/window/menus.ts'

type Item = ReturnType<typeof applicationMenu>[number]
const roles = (items: readonly Item[]): unknown[] =>
  items
    .flatMap(({ role, submenu }) => [role, ...(Array.isArray(submenu) ? roles(submenu) : [])])
    .filter(Boolean)

describe('the program’s menu', () => {
  it.each(['darwin', 'win32', 'linux'] as const)(
    'has editing, zoom, full screen and the window’s own on %s',
    (platform) => {
      expect(roles(applicationMenu(platform))).toEqual(
        expect.arrayContaining([
          'cut',
          'copy',
          'paste',
          'selectAll',
          'undo',
          'resetZoom',
          'zoomIn',
          'zoomOut',
          'togglefullscreen',
          'windowMenu',
        ]),
      )
    },
  )

  it('quits where each platform looks for it', () => {
    expect(roles(applicationMenu('darwin'))).toContain('appMenu')
    expect(roles(applicationMenu('darwin'))).not.toContain('quit')
    expect(roles(applicationMenu('linux'))).toContain('quit')
    expect(roles(applicationMenu('linux'))).not.toContain('appMenu')
  })

  it('neither reloads the page nor opens the developer’s tools', () => {
    for (const platform of ['darwin', 'win32', 'linux'] as const)
      for (const role of ['reload', 'forceReload', 'toggleDevTools', 'viewMenu'])
        expect(roles(applicationMenu(platform))).not.toContain(role)
  })
})

const none = {
  canUndo: false,
  canRedo: false,
  canCut: false,
  canCopy: false,
  canPaste: false,
  canSelectAll: false,
}

describe('the menu of a right click', () => {
  it('edits in a field, what can be done there', () => {
    const items = contextMenu({ isEditable: true, selectionText: '', editFlags: { ...none, canPaste: true } })
    expect(roles(items)).toEqual(['undo', 'redo', 'cut', 'copy', 'paste', 'selectAll'])
    expect(items.filter(({ enabled }) => enabled).map(({ role }) => role)).toEqual(['paste'])
  })

  it('copies words that are marked', () => {
    const items = contextMenu({
      isEditable: false,
      selectionText: '24 N·m',
      editFlags: { ...none, canCopy: true },
    })
    expect(items).toEqual([{ role: 'copy', enabled: true }])
  })

  it('is not there elsewhere', () => {
    expect(contextMenu({ isEditable: false, selectionText: ' ', editFlags: none })).toEqual([])
  })
})
