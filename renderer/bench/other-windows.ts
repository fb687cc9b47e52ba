/** A build, or a draft by its id, that has come further, and how far; null for the library, which has another revision. */
export interface WindowNews {
  readonly build: string | null
  /** The number of its last entry. */
  readonly seq: number
}

/** The way to the other windows that show the same record. */
export interface OtherWindows {
  announce(confirmed: WindowNews): void
  /** Calls `listener` with what other windows announce, from now on. */
  listen(listen: (confirmed: WindowNews) => void): void
}

/**
 * The windows of one browser that were opened by this host: they are of one origin, and no other page is. A window in
 * another browser is not reached by this; it asks the host when it is looked at again.
 */
export function otherWindows(): OtherWindows {
  const channel = new BroadcastChannel('builds')
  return {
    announce: (confirmed) => channel.postMessage(confirmed),
    listen: (listen) => {
      channel.onmessage = ({ data }: MessageEvent<WindowNews>) => listen(data)
    },
  }
}

/** For a window that is alone. */
export const noOtherWindows: OtherWindows = { announce: () => undefined, listen: () => undefined }
