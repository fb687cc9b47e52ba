import type { Client } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'

/** What became of a file that was to be saved, as far as the window can know it. */
export type SaveOutcome =
  | { readonly kind: 'saved'; readonly path: string }
  | { readonly kind: 'no-place' }
  /** The browser has it as a download, and alone knows how that ends. */
  | { readonly kind: 'with-browser'; readonly fileName: string }
  | { readonly kind: 'refused'; readonly problem: Problem }

/** Saves a text as a file: by the host where it asks for the place, else the way a browser saves a download. */
export async function saveFile(client: Client, fileName: string, text: string): Promise<SaveOutcome> {
  // Asked first, so that no large text is sent to a host that leaves it to the browser.
  const host = await client.request('host.read', {})
  if (!host.ok) return { kind: 'refused', problem: host.problem }
  if (host.value.host === 'local') {
    download(fileName, text)
    return { kind: 'with-browser', fileName }
  }
  const answer = await client.request('files.save', { fileName, text })
  if (!answer.ok) return { kind: 'refused', problem: answer.problem }
  return pathOrNone(answer.value.path)
}

export function pathOrNone(path: string | null): SaveOutcome {
  return path === null ? { kind: 'no-place' } : { kind: 'saved', path }
}

function download(fileName: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/octet-stream' }))
  const link = document.createElement('a')
  link.href = address
  link.download = fileName
  link.click()
  URL.revokeObjectURL(address)
}
