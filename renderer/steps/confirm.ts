/** The one thing to do next: what the big button says, and what it does. */
export interface Confirm {
  readonly text: string
  readonly run: () => unknown
  /** Offered too where the work of the step is not: it records nothing, or takes the build over from another bench. */
  readonly whenReadOnly?: boolean
}

/** Whether a pedal is held down: that is one press, and presses no button again that has the focus. */
export function isHeldDown({ repeat, key, target }: KeyboardEvent): boolean {
  return (
    repeat && (key === 'Enter' || key === ' ') && target instanceof HTMLElement && target.matches('button, a')
  )
}

/**
 * Whether a key press means the main button. Enter and Space do (a foot pedal is a keyboard), unless the key belongs to
 * what has the focus: a text being written takes Space, and Enter with Shift, and a button reached by Tab takes both once. A
 * button that was clicked keeps the focus without showing it; the next press of the pedal is not meant for that one.
 */
export function confirmsByKey(event: KeyboardEvent): boolean {
  if (event.defaultPrevented || event.repeat || event.ctrlKey || event.altKey || event.metaKey) return false
  if (event.key !== 'Enter' && event.key !== ' ') return false
  if (!(event.target instanceof HTMLElement)) return true
  if (event.target.matches('select, summary:focus-visible')) return false
  if (event.target.matches('input, textarea')) return event.key === 'Enter' && !event.shiftKey
  return !event.target.matches('button:focus-visible, a:focus-visible')
}
