/** The one thing to do next: what the big button says, and what it does. */
export interface Confirm {
  readonly text: string
  readonly run: () => unknown
}

/**
 * Whether a key press means the main button. Enter and Space do (a foot pedal is a keyboard), unless the key belongs to
 * what has the focus: a text being written, or a button reached by Tab. A button that was clicked keeps the focus
 * without showing it; the next press of the pedal is not meant for that one.
 */
export function confirmsByKey(event: KeyboardEvent): boolean {
  if (event.defaultPrevented || event.repeat || event.ctrlKey || event.altKey || event.metaKey) return false
  if (event.key !== 'Enter' && event.key !== ' ') return false
  if (!(event.target instanceof HTMLElement)) return true
  if (event.target.matches('textarea, select, summary')) return false
  if (event.target.matches('input')) return event.key === 'Enter'
  return !event.target.matches('button:focus-visible, a:focus-visible')
}
