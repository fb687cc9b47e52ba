import type { Preferences } from '../../../core/contract/index.ts'

/** The window's ground before its page is painted: the window's `paper` in renderer/look/colours.ts, which a test compares. */
export const grounds = { light: '#f4f1e8', dark: '#14171a' } as const

export function groundColour(chosen: Preferences['theme'], systemIsDark: boolean): string {
  const isDark = chosen === 'as-the-system' ? systemIsDark : chosen === 'dark'
  return isDark ? grounds.dark : grounds.light
}
