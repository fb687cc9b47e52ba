import { z } from 'zod'
import { problemMessage } from './problem-message.ts'

/** Why the archive of the shop was not asked, and since when; null where it was. What is shown then is what this bench has. */
export const shopCut = z
  .strictObject({ since: z.iso.datetime().nullable(), problem: problemMessage })
  .nullable()
export type ShopCut = z.output<typeof shopCut>
