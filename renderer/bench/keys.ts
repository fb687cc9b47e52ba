import type { Words } from '../../core/words/index.ts'

/** What a key asks of the drawing, whichever step is on the table. */
export type DrawingAction = 'flip' | 'turn' | 'bench-view' | 'keys' | 'say-again' | 'say-slower' | ZoomAction

type ZoomAction = 'nearer' | 'further' | 'whole-sheet' | 'whole-sheet-always'

/** Keys of one character; a person may switch them off (WCAG 2.1.4). */
const characters: Readonly<Record<string, DrawingAction>> = {
  f: 'flip',
  r: 'turn',
  b: 'bench-view',
  '?': 'keys',
  s: 'say-again',
  l: 'say-slower',
  '+': 'nearer',
  '-': 'further',
  '0': 'whole-sheet',
}

/** Null where the key belongs to a text that is being written, or means nothing here. */
export function askedBy(event: KeyboardEvent, letterKeys: boolean): DrawingAction | null {
  if (event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey || isWritten(event))
    return null
  if (event.key === 'Home') return 'whole-sheet-always'
  return letterKeys && !event.repeat ? (characters[event.key.toLowerCase()] ?? null) : null
}

/** Whether the key is typed into a field. */
export function isWritten({ target }: KeyboardEvent): boolean {
  return target instanceof HTMLElement && target.matches('input, textarea, select')
}

/** Every key of the build window and what it does, in the order in which people read it; its texts are in `words.keys`. */
export const keyList: readonly {
  readonly keys: keyof Words['keys']['names']
  readonly does: keyof Words['keys']['does']
  /** Whether it is one of those that can be switched off. */
  readonly character?: true
}[] = [
  { keys: 'enterOrSpace', does: 'confirm' },
  { keys: 'backspace', does: 'takeBack' },
  { keys: 'digits', does: 'beginReading' },
  { keys: 'leftRight', does: 'moveStart' },
  { keys: 'upDown', does: 'moveReached' },
  { keys: 'arrows', does: 'moveDrawing' },
  { keys: 'home', does: 'wholeDrawing' },
  { keys: 'escape', does: 'close' },
  { keys: 'tab', does: 'nextControl' },
  { keys: 'f', does: 'flip', character: true },
  { keys: 'r', does: 'turn', character: true },
  { keys: 'plusMinus', does: 'zoom', character: true },
  { keys: 'zero', does: 'wholeDrawingNoReading', character: true },
  { keys: 'b', does: 'benchView', character: true },
  { keys: 's', does: 'sayAgain', character: true },
  { keys: 'l', does: 'saySlower', character: true },
  { keys: 'questionMark', does: 'list', character: true },
]
