import { parseArgs } from 'node:util'
import { z } from 'zod'
import { done, sentenceIn, type Outcome } from '../../core/problem/index.ts'
import {
  chooseLists,
  migrateShop,
  readAddress,
  readAuthority,
  rebuildShopLists,
  setUp,
  shopStatus,
  writeAddress,
  type Destination,
} from '../shop/index.ts'
import { words } from './spoken.ts'

/** Where an address leads, with the password that stands in it or in the environment. */
function destinationOf(text: string, fromOutside: string | undefined): Outcome<Destination> {
  const read = readAddress(text)
  if (!read.ok) return read
  const { address } = read.value
  const password = read.value.password ?? fromOutside ?? null
  const authority = address.authority === null ? done(null) : readAuthority(address.authority)
  return authority.ok ? done({ address, authority: authority.value, password: () => password }) : authority
}

/** What the words after the command choose. */
interface ListChoice {
  readonly benches: number
  readonly lists: Parameters<typeof chooseLists>[1]
}

async function init(destination: Destination, { benches }: ListChoice): Promise<Outcome<string>> {
  const made = await setUp(destination, benches)
  if (!made.ok) return made
  const { shop, database } = destination.address
  return done(
    words.shopSetup.ready({
      shop,
      database,
      roles: made.value.map(({ kind, address, password }) => ({
        kind,
        address: writeAddress(address),
        password,
      })),
    }),
  )
}

async function migrate(destination: Destination): Promise<Outcome<string>> {
  const migrated = await migrateShop(destination)
  return migrated.ok
    ? done(words.shopSetup.migrated({ shop: destination.address.shop, ...migrated.value }))
    : migrated
}

async function status(destination: Destination): Promise<Outcome<string>> {
  const found = await shopStatus(destination)
  return found.ok ? done(words.shopSetup.status({ shop: destination.address.shop, ...found.value })) : found
}

async function lists(destination: Destination, { lists: chosen }: ListChoice): Promise<Outcome<string>> {
  const common = await chooseLists(destination, chosen)
  if (!common.ok) return common
  const is = (list: 'people' | 'wrenches') => common.value.includes(list)
  return done(
    words.shopSetup.lists({ shop: destination.address.shop, people: is('people'), wrenches: is('wrenches') }),
  )
}

async function rebuild(destination: Destination): Promise<Outcome<string>> {
  const rebuilt = await rebuildShopLists(destination)
  return rebuilt.ok
    ? done(words.shopSetup.rebuilt({ shop: destination.address.shop, ...rebuilt.value }))
    : rebuilt
}

const commands: Readonly<
  Record<string, (destination: Destination, chosen: ListChoice) => Promise<Outcome<string>>>
> = {
  init,
  migrate,
  status,
  lists,
  rebuild,
}

const oneOrOwn = z.enum(['one', 'own']).optional()

/** More than any shop has. */
const mostBenches = 500

/** What the owner of an archive does, once and now and then: `init postgres://owner@server/database --benches 3`. */
export async function shopCommand(
  args: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): Promise<{ readonly exitCode: 0 | 1 | 2; readonly text: string }> {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: { benches: { type: 'string' }, people: { type: 'string' }, wrenches: { type: 'string' } },
    strict: false,
    allowPositionals: true,
  })
  const [command = '', address] = positionals
  const benches = Number(values.benches ?? 1)
  const chosen = z.strictObject({ people: oneOrOwn, wrenches: oneOrOwn }).safeParse({
    people: values.people,
    wrenches: values.wrenches,
  })
  const carryOut = commands[command]
  if (
    carryOut === undefined ||
    address === undefined ||
    !chosen.success ||
    !Number.isInteger(benches) ||
    benches < 0 ||
    benches > mostBenches
  )
    return { exitCode: 2, text: words.shopSetup.usage }
  const destination = destinationOf(address, env['PGPASSWORD'])
  const answer = destination.ok
    ? await carryOut(destination.value, { benches, lists: chosen.data })
    : destination
  return answer.ok
    ? { exitCode: 0, text: answer.value }
    : { exitCode: 1, text: sentenceIn(words, answer.problem) }
}
