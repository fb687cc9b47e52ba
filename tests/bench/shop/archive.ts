import { postgresArchive, readAddress, setUp } from '../../../electron/shop/index.ts'
import { value } from '../../electron/shop/sample.ts'
import { startServer } from '../../electron/shop/server.ts'

/** The archive of a shop on a server of its own, empty, with logins for so many benches, and what ends it. */
export async function emptyArchive(benches = 1) {
  const server = await startServer(['shared_buffers=256MB', 'max_wal_size=4GB'])
  const { address } = value(readAddress(server.address('postgres')))
  const owner = { address, authority: null, password: () => server.password }
  const roles = value(await setUp(owner, benches)).filter(({ kind }) => kind === 'bench')
  const [role] = roles
  if (role === undefined) throw new Error('no bench')
  const archive = postgresArchive({ address: role.address, authority: null, password: () => role.password })
  return {
    server,
    owner,
    roles,
    archive,
    close: async () => {
      await archive.close()
      await server.stop()
    },
  }
}
