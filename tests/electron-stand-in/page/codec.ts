/**
 * Values as text and back, with what JSON would lose: `undefined`, −0, the infinities, bigints, dates, errors, maps, sets,
 * bytes, and keys such as `__proto__`. Handed to pages as its own text, so it uses nothing from outside.
 */
export function makeCodec() {
  type Tagged = { readonly kind: string; readonly of?: unknown }
  type Encoded = string | number | boolean | null | readonly Encoded[] | Tagged

  function encode(value: unknown): Encoded {
    if (value === undefined) return { kind: 'undefined' }
    if (typeof value === 'number' && (!Number.isFinite(value) || Object.is(value, -0)))
      return { kind: 'number', of: Object.is(value, -0) ? '-0' : String(value) }
    if (typeof value === 'bigint') return { kind: 'bigint', of: String(value) }
    if (typeof value === 'function' || typeof value === 'symbol')
      throw new Error('An object could not be cloned.')
    if (typeof value !== 'object' || value === null) return value as string | number | boolean | null
    if (Array.isArray(value)) return value.map(encode)
    if (value instanceof Date) return { kind: 'date', of: value.getTime() }
    if (value instanceof Error) return { kind: 'error', of: value.message }
    if (value instanceof Map)
      return { kind: 'map', of: [...value].map(([key, of]) => [encode(key), encode(of)]) }
    if (value instanceof Set) return { kind: 'set', of: [...value].map(encode) }
    if (ArrayBuffer.isView(value))
      return { kind: 'bytes', of: [...new Uint8Array(value.buffer, value.byteOffset, value.byteLength)] }
    return { kind: 'object', of: Object.entries(value).map(([key, of]) => [key, encode(of)]) }
  }

  function decode(encoded: Encoded): unknown {
    if (typeof encoded !== 'object' || encoded === null) return encoded
    if (Array.isArray(encoded)) return encoded.map(decode)
    const { kind, of } = encoded as { kind: string; of: never }
    const pairs = (): [Encoded, Encoded][] => of
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
        return new Map(pairs().map(([key, value]) => [decode(key), decode(value)]))
      case 'set':
        return new Set((of as Encoded[]).map(decode))
      case 'bytes':
        return new Uint8Array(of)
      default: {
        const made = {}
        for (const [key, value] of pairs())
          Object.defineProperty(made, key as string, {
            value: decode(value),
            enumerable: true,
            writable: true,
            configurable: true,
          })
        return made
      }
    }
  }

  return {
    encode: (value: unknown): string => JSON.stringify(encode(value)),
    decode: (text: string): unknown => decode(JSON.parse(text) as Encoded),
  }
}

export type Codec = ReturnType<typeof makeCodec>
