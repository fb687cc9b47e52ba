import { z } from 'zod'

/** A person as a list keeps one. A row that is none is passed over: a name or an id that no list can show lets nobody in. */
export const personRow = z.object({
  id: z.uuid(),
  name: z.string().trim().min(1),
  role: z.enum(['mechanic', 'apprentice']),
  badge: z.string().nullable(),
  pin: z.string().nullable(),
})
