import { afterAll, beforeAll, describe } from 'vitest'
import {
  postgresArchive,
  readAddress,
  type ArchiveOptions,
  type ShopArchive,
} from '../../../electron/shop/index.ts'
import { setUp } from '../../../electron/shop/postgres/set-up.ts'
import { archiveContract } from './contract.ts'
import { value } from './sample.ts'
import { noServer, startServer, type TestServer } from './server.ts'

const why = noServer()
if (why !== null) console.warn(`Skipped: ${why}`)

describe.skipIf(why !== null)('the archive in PostgreSQL', () => {
  let server: TestServer
  const open: ShopArchive[] = []
  let shops = 0

  beforeAll(async () => {
    server = await startServer()
    await server.createDatabase('firm')
  })
  afterAll(async () => {
    for (const archive of open) await archive.close()
    await server.stop()
  })

  function destinationOf(text: string) {
    const { address, password } = value(readAddress(text))
    return { address, authority: null, password: () => password }
  }

  /** A shop of its own for one test, in the database of all: the roles of its benches, and ways to it. */
  async function newShop(benches = 1) {
    shops += 1
    const shop = `shop_${shops}`
    const owner = destinationOf(`${server.address('firm')}&shop=${shop}`)
    const roles = value(await setUp(owner, benches))
    return {
      shop,
      owner,
      roles,
      client: (kind: 'bench' | 'reader' = 'bench', options: ArchiveOptions = {}): ShopArchive => {
        const role = roles.find((each) => each.kind === kind)
        if (role === undefined) throw new Error(kind)
        const archive = postgresArchive(
          { address: role.address, authority: null, password: () => role.password },
          { retryMs: [20, 200], ...options },
        )
        open.push(archive)
        return archive
      },
    }
  }

  archiveContract('in PostgreSQL', async () => {
    const { client } = await newShop()
    return () => Promise.resolve(client())
  })
})
