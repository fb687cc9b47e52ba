/** The address under which the desktop host serves the window to itself. */
export const scheme = 'bedplate'
export const origin = `${scheme}://app`

/** What the scheme may do: behave like a web site of its own, and nothing that goes round a policy. */
export const schemeRights = { standard: true, secure: true, supportFetchAPI: true } as const

/** How the page is held: in the sandbox, its world apart from the preload's, without Node and without frames in it. */
export const pageRules = {
  sandbox: true,
  contextIsolation: true,
  nodeIntegration: false,
  nodeIntegrationInWorker: false,
  nodeIntegrationInSubFrames: false,
  webSecurity: true,
  allowRunningInsecureContent: false,
  webviewTag: false,
  navigateOnDragDrop: false,
  spellcheck: false,
} as const

/** Whether an address is one of ours: by its whole origin, never by how it begins. */
export function isOurs(address: string): boolean {
  return originOf(address) === origin
}

/** The path that is looked up for an address of ours; null for any other. Nothing in it is decoded. */
export function pathOf(address: string): string | null {
  return isOurs(address) ? new URL(address).pathname : null
}

/** Own schemes have the origin `null` in the URL standard, so it is put together here. */
function originOf(address: string): string | null {
  if (!URL.canParse(address)) return null
  const { protocol, host, username, password } = new URL(address)
  return username === '' && password === '' ? `${protocol}//${host}` : null
}
