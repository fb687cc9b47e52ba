import type { ShopArchive } from '../../../../electron/shop/index.ts'
import { buildId, ferryEngine, value } from '../sample.ts'

/** Opens ways to one archive that is empty at first. */
export type OpenShop = () => Promise<() => Promise<ShopArchive>>

export const build = buildId('2026-11-02T08:00:01Z', 1)
export const later = buildId('2026-12-24T08:00:00Z', 2)

/** An archive that has the spec of the sample builds, and a way to it from elsewhere. */
export async function withSpec(
  openShop: OpenShop,
): Promise<readonly [ShopArchive, () => Promise<ShopArchive>]> {
  const client = await openShop()
  const archive = await client()
  value(await archive.keepSpec(ferryEngine))
  return [archive, client]
}
