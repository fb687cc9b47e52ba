import { sendingContract } from './sending.ts'
import { forksContract } from './forks.ts'
import { listOfBuildsContract } from './list-of-builds.ts'
import { besideEntriesContract } from './beside-the-entries.ts'
import { followingContract } from './following.ts'
import type { OpenShop } from './shop-with-spec.ts'

/** What every archive of a shop does, whatever it stands on. */
export function archiveContract(of: string, openShop: OpenShop): void {
  sendingContract(of, openShop)
  forksContract(of, openShop)
  listOfBuildsContract(of, openShop)
  besideEntriesContract(of, openShop)
  followingContract(of, openShop)
}
