// Loaded before Electron's own installer: that one says "fetch failed" and keeps the cause to itself, and nowhere says how
// large the file is. Both are sent to the launcher.
const plainFetch = globalThis.fetch

/**
 * @param {string | URL | Request} address
 * @param {RequestInit} [options]
 */
async function fetchAndReport(address, options) {
  const { host } = new URL(address instanceof Request ? address.url : address)
  try {
    const response = await plainFetch(address, options)
    const total = Number(response.headers.get('content-length') ?? 0)
    if (!response.ok) send({ host, status: response.status })
    else if (total > 0) send({ total })
    return response
  } catch (error) {
    send({ host, cause: deepestCause(error) })
    throw error
  }
}

/**
 * @param {unknown} error
 * @returns {string}
 */
function deepestCause(error) {
  if (!(error instanceof Error)) return String(error)
  return error.cause === undefined ? error.message : deepestCause(error.cause)
}

/** @param {import('./fetch-electron.ts').FetchNote} note */
function send(note) {
  process.send?.(note)
}

Object.assign(globalThis, { fetch: fetchAndReport })
// The channel alone is no reason to stay.
process.channel?.unref()
