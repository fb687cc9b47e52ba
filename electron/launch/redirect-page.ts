import { rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** How long the page is kept, in milliseconds: a browser's first start on a slow machine, and then some. */
const keptMs = 60_000

/**
 * Writes the page that leads on to an address, readable by its user alone, and takes it away after a minute or when this
 * process ends. The data folder must be there. On the way it makes the window as large as the screen has room for, where
 * nobody has yet given it a size: an app window takes neither `--start-maximized` nor a size that fits a screen we do not
 * know, but one without tabs may be resized by its page (chrome/browser/ui/browser.cc, `SetContentsBounds`). Answers with the
 * path of the page.
 */
export function writeRedirectPage(address: string, dataFolder: string, isFirst: boolean): string {
  const page = join(dataFolder, 'open.html')
  const remove = (): void => rmSync(page, { force: true })
  remove() // a file that is there would keep its own mode
  writeFileSync(page, pageTo(address, isFirst), { mode: 0o600 })
  process.once('exit', remove)
  setTimeout(remove, keptMs).unref()
  return page
}

/** An address in its standard form holds no quote and no bracket, so it can end neither the string nor the script. */
function pageTo(address: string, isFirst: boolean): string {
  const fill = isFirst
    ? `moveTo(screen.availLeft, screen.availTop); resizeTo(screen.availWidth, screen.availHeight); `
    : ''
  return `<!doctype html>
<meta charset="utf-8">
<meta name="referrer" content="no-referrer">
<title>Bedplate</title>
<script>${fill}location.replace(${JSON.stringify(new URL(address).href)})</script>
`
}
