import { archive } from './0001-archive.ts'
import { commonLists } from './0002-common-lists.ts'
import { lineThatCounts } from './0003-line-that-counts.ts'
import { bounds } from './0004-bounds.ts'
import type { ShopMigration, ShopNames } from './migration.ts'

export { listsAreOther } from './0002-common-lists.ts'
export type { ShopMigration, ShopNames } from './migration.ts'

/** In order, without a gap. A migration that has ever been released is never edited: a new one is added. */
export const shopMigrations: readonly ShopMigration[] = [archive, commonLists, lineThatCounts, bounds]

/** The version of the archive’s schema that this program works with. */
export const latestShopVersion = shopMigrations.length

export function namesOf(shop: string): ShopNames {
  return { schema: shop, bench: `${shop}_bench`, reader: `${shop}_reader` }
}
