import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { done } from '../../../core/problem/index.ts'
import type { Requests } from '../../../electron/requests/index.ts'
import { postgresArchive, type ShopAddress } from '../../../electron/shop/index.ts'
import { openStore } from '../../../electron/store/index.ts'
import { answersOn } from '../../electron/answers.ts'
import { value } from '../../electron/shop/sample.ts'

/** The address of an archive with the password, as a person types it. */
export function typedAddress({ host, port, user, database, shop }: ShopAddress, password: string): string {
  const at = new URLSearchParams({ host, port: String(port), shop })
  return `postgres://${user}:${password}@/${database}?${at}`
}

/** A bench in a folder of its own. It has joined the shop at the address, or none. */
export async function withBench<Result>(
  address: string | null,
  work: (answer: Requests['answer']) => Promise<Result>,
): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-bench-'))
  const store = value(await openStore(folder, () => new Date()))
  let kept: string | null = null
  const { answer, stop } = answersOn(store, {
    now: () => new Date(),
    newId: randomUUID,
    shop: {
      openArchive: (to, password) =>
        done(postgresArchive({ address: to, authority: null, password: () => password })),
      secret: {
        read: () => done(kept),
        keep: (password) => void (kept = password),
        forget: () => undefined,
        place: () => 'file',
      },
      machine: 'bench',
      random: Math.random,
    },
  })
  try {
    if (address !== null) {
      const joined = await answer('shop.join', { address, password: '', authority: '' })
      if (!joined.ok) throw new Error(joined.problem.code)
    }
    return await work(answer)
  } finally {
    await stop()
    store.close()
    rmSync(folder, { recursive: true, force: true })
  }
}
