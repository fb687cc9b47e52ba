import type { z } from 'zod'
import type { engineSpec } from '../../engine/index.ts'

/** A spec as its file has it: each value a text with its unit, as somebody typed it. Its shape is good, its numbers need not be. */
export type SpecDocument = z.input<typeof engineSpec>
