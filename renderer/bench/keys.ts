/** What a key asks of the drawing, whichever step is on the table. */
export type Asked =
  'flip' | 'turn' | 'bench-view' | 'keys' | 'nearer' | 'further' | 'whole-sheet' | 'whole-sheet-always'

/** Keys of one character; a person may switch them off (WCAG 2.1.4). */
const characters: Readonly<Record<string, Asked>> = {
  f: 'flip',
  r: 'turn',
  b: 'bench-view',
  '?': 'keys',
  '+': 'nearer',
  '-': 'further',
  '0': 'whole-sheet',
}

/** Null where the key belongs to a text that is being written, or means nothing here. */
export function askedBy(event: KeyboardEvent, letterKeys: boolean): Asked | null {
  if (event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey || isWritten(event))
    return null
  if (event.key === 'Home') return 'whole-sheet-always'
  return letterKeys && !event.repeat ? (characters[event.key.toLowerCase()] ?? null) : null
}

/** Whether the key is typed into a field. */
export function isWritten({ target }: KeyboardEvent): boolean {
  return target instanceof HTMLElement && target.matches('input, textarea, select')
}

/** Every key of the build window and what it does, for people to read. */
export const keyList: readonly {
  readonly keys: string
  readonly does: string
  /** Whether it is one of those that can be switched off. */
  readonly character?: true
}[] = [
  { keys: 'Enter or Space', does: 'The main button. A foot pedal that types one of them does the same.' },
  { keys: 'Backspace', does: 'Take the last pull back.' },
  { keys: '0 to 9', does: 'Begin a reading, where one can be typed.' },
  { keys: '← →', does: 'While an angle is turned: move where the handle starts by 15°; with Shift by 1°.' },
  { keys: '↑ ↓', does: 'While an angle is turned: move the angle reached by 15°; with Shift by 1°.' },
  { keys: '← → ↑ ↓', does: 'Otherwise: move the drawing, where it is larger than the sheet.' },
  { keys: 'Home', does: 'The whole drawing again.' },
  { keys: 'Esc', does: 'Leave what lies open; leave the bench view.' },
  { keys: 'Tab', does: 'To every button, and to the drawing in words.' },
  { keys: 'F', does: 'See the face from the other side.', character: true },
  { keys: 'R', does: 'Turn the drawing by a quarter.', character: true },
  { keys: '+ and −', does: 'Nearer, further.', character: true },
  { keys: '0', does: 'The whole drawing again, where no reading can be typed.', character: true },
  { keys: 'B', does: 'The bench view, to be read from afar; once more leaves it.', character: true },
  { keys: '?', does: 'This list.', character: true },
]
