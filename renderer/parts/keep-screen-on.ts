/**
 * Keeps the screen from going dark while it is read with both hands full, until the function given back is called. The system
 * lets go of it when the window is hidden (W3C Screen Wake Lock), so it is asked for again when the window is back. `report` hears
 * whether it stays on: a browser may not be able to, and a system may refuse, as some do on a low battery.
 */
export function keepScreenOn(report: (staysOn: boolean) => void = () => undefined): () => void {
  let lock: WakeLockSentinel | null = null
  let isOver = false
  const take = async (): Promise<void> => {
    if (document.visibilityState !== 'visible') return
    if (!('wakeLock' in navigator)) return report(false)
    try {
      lock = await navigator.wakeLock.request('screen')
      if (isOver) await lock.release()
      else report(true)
    } catch {
      lock = null
      report(false)
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
