import { describe } from 'vitest'
import { connectingTo } from './connecting.ts'
import { archiveContract } from './contract/archive.ts'
import { guardsOf } from './guards.ts'
import { noServer } from './server.ts'
import { rebuildingOn } from './rebuilding.ts'
import { startingAt } from './starting.ts'
import { settingUpOn } from './setting-up.ts'
import { useShops } from './shops.ts'
import { stormOn } from './storm.ts'

const why = noServer()
if (why !== null) console.warn(`Skipped: ${why}`)

// One file, so that one server is started for all of it.
describe.skipIf(why !== null)('the archive in PostgreSQL', () => {
  const shops = useShops()
  archiveContract('in PostgreSQL', async () => {
    const { client } = await shops.emptyShop()
    return () => Promise.resolve(client())
  })
  guardsOf(shops)
  connectingTo(shops)
  settingUpOn(shops)
  rebuildingOn(shops)
  startingAt(shops)
  stormOn(shops)
})
