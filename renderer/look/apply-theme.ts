import { readingFontSize, type Reader } from '../../core/layout/index.ts'
import { windowColours } from './colours.ts'
import type { Theme } from './theme.svelte.ts'

/** Gives the page the colours of a theme, and the sizes that its reader needs. */
export function applyTheme(theme: Theme, reader: Reader): void {
  const { dataset, style } = document.documentElement
  dataset['theme'] = theme
  for (const [name, colour] of Object.entries(windowColours[theme])) style.setProperty(`--${name}`, colour)
  style.setProperty('--mm', `${reader.pxPerMm}px`)
  style.setProperty('--read', `${readingFontSize(reader)}px`)
}
