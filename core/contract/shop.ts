import { z } from 'zod'
import { benchName } from '../builds/index.ts'
import { nothing, problemMessage } from './problem-message.ts'
import { storedBuild } from './stored-build.ts'

const named = { build: z.uuid(), name: z.string(), number: z.string() }

/** A build that was continued at two benches apart. */
const fork = z.strictObject({
  ...named,
  /** From this entry on. */
  entry: z.int(),
  /** The hash of the other line’s first entry: what is settled over. */
  line: z.string(),
  bench: z.string(),
  /** The bench whose line is here: null for this one, and another where this one only looked at the build before. */
  own: z.string().nullable(),
  /** Which line counts; null where nobody settled it, and where the two contradict one another. */
  counts: z.enum(['here', 'there']).nullable(),
})
export type ShopFork = z.output<typeof fork>

const joined = z.strictObject({
  /** Without a password. */
  address: z.string(),
  /** How it stands with the way to the archive. */
  connection: z.enum(['untried', 'open', 'cut']),
  /** Since when; null while it was not tried. */
  since: z.iso.datetime().nullable(),
  problem: problemMessage.nullable(),
  /** What is confirmed here and not in the archive yet. */
  waiting: z.strictObject({ entries: z.int(), builds: z.int() }),
  /** Builds that the archive did not take, and why. */
  refused: z.array(z.strictObject({ ...named, why: problemMessage })),
  /** Builds that were continued at two benches apart. */
  apart: z.array(fork),
  /** Lists that all benches have in common, as the owner of the shop chose; any other is this bench’s own. */
  commonLists: z.array(z.enum(['people', 'wrenches'])),
  /** As the archive knew them last; this one too. */
  benches: z.array(benchName.extend({ program: z.string(), seenAt: z.iso.datetime(), isHere: z.boolean() })),
})

const state = z.strictObject({
  bench: benchName,
  /** Null while the bench belongs to no shop. */
  joined: joined.nullable(),
  /** Where this host keeps the password of the archive: in the platform’s key store, in a file, or it has it from its environment. */
  passwordIn: z.enum(['key-store', 'file', 'environment']),
})
export type ShopState = z.output<typeof state>

/** Requests about the shop: the benches that share an archive, and how builds go between them. */
export const shopRequests = {
  'shop.read': { input: nothing, output: state },
  'shop.name-bench': { input: z.strictObject({ name: z.string().max(200) }), output: state },
  /** Refused where the address cannot be used; whether anything answers there, `shop.read` says. */
  'shop.join': {
    input: z.strictObject({
      /** As typed; what is kept of it has no password. */
      address: z.string().max(2000),
      /** Empty where the address has it, none is asked for, or it was kept before. */
      password: z.string().max(1000),
      /** The path of the file with the authority’s certificate; empty for those that the system knows. */
      authority: z.string().max(2000),
    }),
    output: state,
  },
  'shop.leave': { input: nothing, output: state },
  /** Takes in what the archive has of a build, and opens it; with the network down, or in no shop, what is here. */
  'shop.open': { input: z.strictObject({ build: z.uuid() }), output: storedBuild },
  /** Another line of a build, to look at; its name is the hash of its first entry. */
  'shop.read-line': { input: z.strictObject({ build: z.uuid(), line: z.string() }), output: storedBuild },
  /**
   * Answers when something has come from the shop since `after`, or a while has passed; at once where the bench belongs to none.
   * `builds` has those that changed, as far as they are known.
   */
  'shop.news': {
    input: z.strictObject({ after: z.int().min(0) }),
    output: z.strictObject({ isJoined: z.boolean(), number: z.int(), builds: z.array(z.string()) }),
  },
} as const
