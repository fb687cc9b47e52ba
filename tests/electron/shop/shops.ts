import postgres, { type Sql } from 'postgres'
import { afterAll, beforeAll } from 'vitest'
import {
  postgresArchive,
  readAddress,
  type ArchiveOptions,
  type Destination,
  type ShopArchive,
} from '../../../electron/shop/index.ts'
import { setUp, type NewRole } from '../../../electron/shop/postgres/set-up.ts'
import { value } from './sample.ts'
import { startServer, type TestServer } from './server.ts'

export interface NewShop {
  readonly name: string
  readonly owner: Destination
  readonly roles: readonly NewRole[]
  role: (kind: NewRole['kind']) => NewRole
  /** A way to it, closed after the tests. */
  client: (kind?: NewRole['kind'], options?: ArchiveOptions) => ShopArchive
  /** Statements as they are typed, by one of its roles or its owner. */
  asRole: (who: NewRole['kind'] | 'owner') => Sql
}

/** One server for all tests of a file, and shops on it, each for itself. */
export interface Shops {
  server(): TestServer
  newShop(benches?: number): Promise<NewShop>
  /** The same one each time, with whatever is in it. */
  anyShop(): Promise<NewShop>
  /** The same one each time, with nothing in it: quicker than a new one. Ways to it from before are closed. */
  emptyShop(): Promise<NewShop>
  /** Closed after the tests. */
  open(destination: Destination, options?: ArchiveOptions): ShopArchive
}

/** A machine under load is slow, not wrong. */
const mostStarting = 120_000

export const database = 'firm'

export function useShops(): Shops {
  let server: TestServer | undefined
  const after: (() => Promise<unknown>)[] = []
  const opened: ShopArchive[] = []
  let shops = 0

  beforeAll(async () => {
    server = await startServer()
    await server.createDatabase(database)
  }, mostStarting)
  afterAll(async () => {
    for (const each of after) await each()
    for (const archive of opened) await archive.close()
    await server?.stop()
  }, mostStarting)

  const there = () => {
    if (server === undefined) throw new Error('before the tests')
    return server
  }
  const open = (destination: Destination, options: ArchiveOptions = {}) => {
    const archive = postgresArchive(destination, { retryMs: [20, 200], ...options })
    opened.push(archive)
    return archive
  }
  let emptied: Promise<NewShop> | undefined
  let any: Promise<NewShop> | undefined
  async function newShop(benches = 1): Promise<NewShop> {
    shops += 1
    const name = `shop_${shops}`
    const owner = destinationOf(`${there().address(database)}&shop=${name}`)
    const roles = value(await setUp(owner, benches))
    const role = (kind: NewRole['kind']) => {
      const found = roles.find((each) => each.kind === kind)
      if (found === undefined) throw new Error(kind)
      return found
    }
    return {
      name,
      owner,
      roles,
      role,
      client: (kind = 'bench', options = {}) => open(destinationFor(role(kind)), options),
      asRole(who) {
        const { address, password } =
          who === 'owner' ? { address: owner.address, password: there().password } : role(who)
        const sql = postgres({
          host: there().folder,
          port: there().port,
          user: address.user,
          password,
          database,
          max: 1,
          onnotice: () => {},
          connection: { search_path: name },
        })
        after.push(() => sql.end({ timeout: 1 }))
        return sql
      },
    }
  }
  return {
    newShop,
    server: there,
    open,
    anyShop: () => (any ??= newShop()),
    async emptyShop() {
      for (const archive of opened.splice(0)) await archive.close()
      const shop = await (emptied ??= newShop())
      const owner = shop.asRole('owner')
      // As a restore does it: without the triggers.
      await owner.unsafe(`SET session_replication_role = 'replica'; UPDATE counter SET change = 0;
        TRUNCATE build, mention, entry, spec, photo, fork_entry, fork_settled, list_item, bench`)
      await owner.end()
      return shop
    },
  }
}

export function destinationFor(
  { address, password }: NewRole,
  by: Partial<NewRole['address']> = {},
): Destination {
  return { address: { ...address, ...by }, authority: null, password: () => password }
}

export function destinationOf(text: string): Destination {
  const { address, password } = value(readAddress(text))
  return { address, authority: null, password: () => password }
}
