/** Whether a window can show. Only Linux runs without a display and says so by two variables. */
export function hasDisplay(
  platform: NodeJS.Platform,
  env: Readonly<Record<string, string | undefined>>,
): boolean {
  return platform !== 'linux' || Boolean(env.DISPLAY) || Boolean(env.WAYLAND_DISPLAY)
}

/** Whether this process is the superuser's; never on Windows. */
export function isRoot(): boolean {
  return process.getuid?.() === 0
}
