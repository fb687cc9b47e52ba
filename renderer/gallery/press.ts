import { tick } from 'svelte'

/** A button, or the line that opens a part, by how its text begins, in the whole stage or in a group of buttons; a choice of a list; a field that the cursor goes to; or a text that is waited for. */
export type Press =
  | string
  | ButtonOfGroup
  | ChoiceOfList
  | { readonly field: string }
  | { readonly appears: string }

interface ButtonOfGroup {
  readonly group: string
  readonly button: string
}

interface ChoiceOfList {
  /** How the list is called. */
  readonly choose: string
  readonly option: string
}

/** Time enough for the model of the largest joint on a slow machine. Milliseconds. */
const mostWaited = 20_000

/** Presses buttons one after another, each the first that is meant. Throws where there is none, or a text does not appear. */
export async function press(within: HTMLElement, presses: readonly Press[]): Promise<void> {
  for (const each of presses) {
    await tick()
    if (typeof each === 'string') pressIn(within, each)
    else if ('appears' in each) await waitFor(within, each.appears)
    else if ('choose' in each) choose(within, each)
    else if ('field' in each) goInto(within, each.field)
    else pressIn(groupIn(within, each.group), each.button)
  }
  await tick()
}

function pressIn(within: Element, text: string) {
  const buttons = [...within.querySelectorAll('button'), ...within.querySelectorAll('summary')]
  const button = buttons.find(
    (each) =>
      spaced(each.textContent).trim().startsWith(spaced(text)) && !('disabled' in each && each.disabled),
  )
  if (!button) throw new Error(`there is no button “${text}” to press`)
  button.click()
  if (button.tagName === 'SUMMARY') button.scrollIntoView({ block: 'start' })
}

function choose(within: Element, { choose: name, option }: ChoiceOfList) {
  const lists = [...within.querySelectorAll('select')]
  const list = lists.find(({ labels }) => [...labels].some(({ textContent }) => textContent.includes(name)))
  const found = [...(list?.options ?? [])].find(({ text }) => text === option)
  if (!list || !found) throw new Error(`there is no “${option}” to choose for “${name}”`)
  list.value = found.value
  list.dispatchEvent(new Event('change', { bubbles: true }))
}

function goInto(within: Element, name: string) {
  const field = [...within.querySelectorAll('input')].find(({ labels }) =>
    [...(labels ?? [])].some(({ textContent }) => textContent.trim() === name),
  )
  if (!field) throw new Error(`there is no field “${name}”`)
  field.focus()
}

function groupIn(within: HTMLElement, name: string): Element {
  const groups = [...within.querySelectorAll('[role="group"]')]
  const group = groups.find((each) => each.getAttribute('aria-label') === name)
  if (!group) throw new Error(`there is no group “${name}”`)
  return group
}

async function waitFor(within: HTMLElement, text: string) {
  const began = performance.now()
  while (!spaced(within.textContent).includes(spaced(text))) {
    if (performance.now() - began > mostWaited) throw new Error(`“${text}” does not appear`)
    await new Promise((resolve) => setTimeout(resolve, 20))
  }
}

/** A text whose numbers are joined to their units, as on a screen, with plain spaces. */
function spaced(text: string): string {
  return text.replaceAll('\u00a0', ' ')
}
