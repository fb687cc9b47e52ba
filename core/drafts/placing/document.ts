export type { SpecDocument } from '../../engine/index.ts'
