import type { Words } from '../../../core/words/index.ts'

/** What can happen to the page in the window, by its sentence. */
export type PageFault = keyof Words['desktop']['pageFaults']

/** What has been done about faults so far. Times are in milliseconds of any one clock. */
export type FaultState =
  | { readonly kind: 'well' }
  | { readonly kind: 'loaded-again'; readonly atMs: number }
  /** The person has been asked and has not answered yet. */
  | { readonly kind: 'asking' }

/** A fault this long after the page was loaded again is a new one, not the same one again. */
const newAfterMs = 10 * 60_000

/**
 * What is done about a fault: the page is loaded again once, since what was confirmed is on disk and the window holds no
 * truth of its own; a second time the person is asked; and while they are, nothing more is done.
 */
export function onPageFault(
  state: FaultState,
  nowMs: number,
): { readonly act: 'load-again' | 'ask' | 'nothing'; readonly state: FaultState } {
  switch (state.kind) {
    case 'asking':
      return { act: 'nothing', state }
    case 'loaded-again':
      if (nowMs - state.atMs < newAfterMs) return { act: 'ask', state: { kind: 'asking' } }
      return { act: 'load-again', state: { kind: 'loaded-again', atMs: nowMs } }
    case 'well':
      return { act: 'load-again', state: { kind: 'loaded-again', atMs: nowMs } }
    default:
      return state satisfies never
  }
}

/** Chromium's code for a load that another one took the place of (net/base/net_error_list.h, `ERR_ABORTED`). */
const aborted = -3

/** Whether a load that failed leaves the window without its page. */
export function isLostLoad(code: number, isMainFrame: boolean): boolean {
  return isMainFrame && code !== aborted
}
