import { auditAfter, type Draft } from '../engine/demo.ts'

/** The lines that speak of one kind of finding. */
export const found = (code: string, change: (spec: Draft) => void, id = 'skerry-3') =>
  auditAfter(id, change).filter((line) => line.includes(` ${code} `))
