import { hostname } from 'node:os'
import { done, type Outcome } from '../../../core/problem/index.ts'
import {
  passwordKeeper,
  postgresArchive,
  readAuthority,
  type KeyStore,
  type ShopAddress,
  type ShopArchive,
} from '../../shop/index.ts'
import type { ShopServices } from './shop-desk.ts'

/** The way to an archive in PostgreSQL. Where the password is kept: `passwordKeeper`. */
export function postgresShop(
  dataFolder: string,
  env: Readonly<Record<string, string | undefined>>,
  keyStore: KeyStore | null,
): Pick<ShopServices, 'openArchive' | 'secret' | 'machine' | 'random'> {
  return {
    openArchive: (address, password) => open(address, password),
    secret: passwordKeeper(dataFolder, env, keyStore),
    machine: hostname(),
    random: Math.random,
  }
}

function open(address: ShopAddress, password: string | null): Outcome<ShopArchive> {
  const authority = address.authority === null ? null : readAuthority(address.authority)
  if (authority?.ok === false) return authority
  const pem = authority === null ? null : authority.value
  return done(postgresArchive({ address, authority: pem, password: () => password }))
}
