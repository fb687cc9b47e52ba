export { isOnThisMachine, readAddress, writeAddress } from './address.ts'
export type { ShopAddress } from './address.ts'
export type {
  Consignment,
  Fork,
  ForkName,
  GreetingBench,
  Hashes,
  ListedBuild,
  Receipt,
  Settlement,
  ShopArchive,
  ShopBench,
  ShopBuild,
  ShopConnection,
  ShopEntry,
  ShopListener,
  ShopSearch,
} from './archive.ts'
export { mayPass } from './fault.ts'
export { lineToGoOnWith, wholeLines } from './whole-lines.ts'
export { memoryShop } from './memory-shop.ts'
export type { MemoryClient, MemoryShop } from './memory-shop.ts'
export { postgresArchive } from './postgres/archive.ts'
export type { ArchiveOptions } from './postgres/archive.ts'
export type { Destination } from './postgres/dial.ts'
export { readAuthority } from './authority.ts'
export { forgetPasswordFile, keepPasswordFile, passwordFile, readPasswordFile } from './password-file.ts'
export { chooseLists, migrateShop, setUp } from './postgres/set-up.ts'
export type { NewRole } from './postgres/set-up.ts'
export { rebuildShopLists } from './postgres/rebuild.ts'
export type { Rebuilt } from './postgres/rebuild.ts'
export { shopStatus } from './postgres/status.ts'
export type { ShopStatus } from './postgres/status.ts'
export { passwordKeeper } from './password.ts'
export type { KeyStore, PasswordKeeper } from './password.ts'
