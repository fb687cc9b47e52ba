import { rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** How long the page is kept, in milliseconds: a browser's first start on a slow machine, and then some. */
const keptMs = 60_000

/**
 * Writes the page that leads on to an address, readable by its user alone, and takes it away after a minute or when this
 * process ends. The data folder must be there. Answers with the path of the page.
 */
export function makeDoorway(address: string, dataFolder: string): string {
  const doorway = join(dataFolder, 'open.html')
  const remove = (): void => rmSync(doorway, { force: true })
  remove() // a file that is there would keep its own mode
  writeFileSync(doorway, pageTo(address), { mode: 0o600 })
  process.once('exit', remove)
  setTimeout(remove, keptMs).unref()
  return doorway
}

/** An address in its standard form holds no quote and no bracket, so it can end neither the string nor the script. */
function pageTo(address: string): string {
  return `<!doctype html>
<meta charset="utf-8">
<meta name="referrer" content="no-referrer">
<title>Bedplate</title>
<script>location.replace(${JSON.stringify(new URL(address).href)})</script>
`
}
