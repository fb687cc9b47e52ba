import type { Handle } from '../../../bench/handle.svelte.ts'
import type { NextTurn } from './next-turn.ts'

/** Left and right move where the handle starts, up and down what was reached; with Shift by 1°. */
export function turnByKey(event: KeyboardEvent, handle: Handle, { pull, window }: NextTurn) {
  const by = event.shiftKey ? 1 : 15
  const reached = handle.reached(pull) ?? window.target
  if (event.key === 'ArrowLeft') handle.pointBy(-by)
  else if (event.key === 'ArrowRight') handle.pointBy(by)
  else if (event.key === 'ArrowUp') handle.reach(pull, reached + by)
  else if (event.key === 'ArrowDown') handle.reach(pull, reached - by)
  else return
  event.preventDefault()
}
