import { flushSync } from 'svelte'

/** All that an effect saw of a value, until it is stopped. */
export function seenBy<T>(value: () => T): { readonly seen: readonly T[]; readonly stop: () => void } {
  const seen: T[] = []
  const stop = $effect.root(() => {
    $effect(() => {
      seen.push(value())
    })
  })
  flushSync()
  return { seen, stop }
}
