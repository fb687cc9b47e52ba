import { writeAddress, type Destination } from '../../../electron/shop/index.ts'

/** An address with its password, as somebody types it. */
export function typedAddress({ address, password }: Pick<Destination, 'address' | 'password'>): string {
  return writeAddress(address).replace(address.user, `${address.user}:${password() ?? ''}`)
}
