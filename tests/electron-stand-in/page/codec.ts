/**
 * Values as text and back, with what JSON would lose: `undefined`, −0, the infinities, bigints, dates, errors, maps, sets,
 * bytes, and keys such as `__proto__`. Handed to pages as its own text, so it uses nothing from outside.
 */
export function makeCodec() {
  type Tagged = { readonly kind: string; readonly of?: unknown }
  type Put = string | number | boolean | null | readonly Put[] | Tagged

  function put(value: unknown): Put {
    if (value === undefined) return { kind: 'undefined' }
    if (typeof value === 'number' && (!Number.isFinite(value) || Object.is(value, -0)))
      return { kind: 'number', of: Object.is(value, -0) ? '-0' : String(value) }
    if (typeof value === 'bigint') return { kind: 'bigint', of: String(value) }
    if (typeof value === 'function' || typeof value === 'symbol')
      throw new Error('An object could not be cloned.')
    if (typeof value !== 'object' || value === null) return value as string | number | boolean | null
    if (Array.isArray(value)) return value.map(put)
    if (value instanceof Date) return { kind: 'date', of: value.getTime() }
    if (value instanceof Error) return { kind: 'error', of: value.message }
    if (value instanceof Map) return { kind: 'map', of: [...value].map(([key, of]) => [put(key), put(of)]) }
    if (value instanceof Set) return { kind: 'set', of: [...value].map(put) }
    if (ArrayBuffer.isView(value))
      return { kind: 'bytes', of: [...new Uint8Array(value.buffer, value.byteOffset, value.byteLength)] }
    return { kind: 'object', of: Object.entries(value).map(([key, of]) => [key, put(of)]) }
  }

  function take(held: Put): unknown {
    if (typeof held !== 'object' || held === null) return held
    if (Array.isArray(held)) return held.map(take)
    const { kind, of } = held as { kind: string; of: never }
    const pairs = (): [Put, Put][] => of
    switch (kind) {
      case 'undefined':
        return undefined
      case 'number':
        return Number(of)
      case 'bigint':
        return BigInt(of)
      case 'date':
        return new Date(of)
      case 'error':
        return new Error(of)
      case 'map':
        return new Map(pairs().map(([key, value]) => [take(key), take(value)]))
      case 'set':
        return new Set((of as Put[]).map(take))
      case 'bytes':
        return new Uint8Array(of)
      default: {
        const made = {}
        for (const [key, value] of pairs())
          Object.defineProperty(made, key as string, {
            value: take(value),
            enumerable: true,
            writable: true,
            configurable: true,
          })
        return made
      }
    }
  }

  return {
    encode: (value: unknown): string => JSON.stringify(put(value)),
    decode: (text: string): unknown => take(JSON.parse(text) as Put),
  }
}

export type Codec = ReturnType<typeof makeCodec>
