import { hostname } from 'node:os'
import { done, type Outcome } from '../../../core/problem/index.ts'
import {
  forgetPasswordFile,
  keepPasswordFile,
  passwordFile,
  postgresArchive,
  readAuthority,
  readPasswordFile,
  type ShopAddress,
  type ShopArchive,
} from '../../shop/index.ts'
import type { ShopServices } from './shop-desk.ts'

/**
 * The way to an archive in PostgreSQL. The password comes from the environment, as PostgreSQL’s own programs have it, else from a file that
 * only this user may read, beside the record.
 */
export function postgresShop(
  dataFolder: string,
  env: Readonly<Record<string, string | undefined>>,
): Pick<ShopServices, 'openArchive' | 'secret' | 'machine' | 'random'> {
  const file = passwordFile(dataFolder)
  return {
    openArchive: (address, password) => open(address, password),
    secret: {
      read: () => (env.PGPASSWORD ? done(env.PGPASSWORD) : readPasswordFile(file)),
      keep: (password) => keepPasswordFile(file, password),
      forget: () => forgetPasswordFile(file),
    },
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
