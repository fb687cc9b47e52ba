/**
 * Keeps the screen from going dark while it is read with both hands full, until the function given back is called. The system
 * lets go of it when the window is hidden (W3C Screen Wake Lock), so it is asked for again when the window is back. A system
 * that refuses, as some do on a low battery, is left alone.
 */
export function keepScreenOn(): () => void {
  let lock: WakeLockSentinel | null = null
  let isOver = false
  const take = async (): Promise<void> => {
    if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return
    try {
      lock = await navigator.wakeLock.request('screen')
      if (isOver) await lock.release()
    } catch {
      lock = null
    }
  }
  const back = (): void => void take()
  document.addEventListener('visibilitychange', back)
  back()
  return () => {
    isOver = true
    document.removeEventListener('visibilitychange', back)
    void lock?.release().catch(() => undefined)
  }
}
