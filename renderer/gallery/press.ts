import { tick } from 'svelte'

/** Presses buttons one after another, each the first whose text begins so. Throws where there is none to be pressed. */
export async function press(within: HTMLElement, texts: readonly string[]): Promise<void> {
  for (const text of texts) {
    await tick()
    const buttons = [...within.querySelectorAll('button')]
    const meant = buttons.find((button) => button.textContent.trim().startsWith(text) && !button.disabled)
    if (!meant) throw new Error(`there is no button “${text}” to press`)
    meant.click()
  }
  await tick()
}
