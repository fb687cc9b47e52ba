export { isOnThisMachine, readAddress, writeAddress } from './address.ts'
export type { ShopAddress } from './address.ts'
export type {
  Consignment,
  Fork,
  ForkName,
  GreetingBench,
  Hashes,
  Listed,
  Receipt,
  Settlement,
  SharedList,
  ShopArchive,
  ShopBench,
  ShopBuild,
  ShopConnection,
  ShopEntry,
  ShopListener,
  ShopSearch,
} from './archive.ts'
export { mayPass } from './fault.ts'
export { memoryShop } from './memory-shop.ts'
export type { MemoryClient, MemoryShop } from './memory-shop.ts'
