import { readFileSync } from 'node:fs'
import { engineFile } from '../../engine-files.ts'

/** The text of a spec with one flange of many fasteners in rows, as no engine has them, and one torque pass over all. */
export function specOfMany(count: number): string {
  const demo = JSON.parse(readFileSync(engineFile('skerry-3'), 'utf8')) as {
    case: object
    fasteners: { id: string; face: string }[]
    cautions: { steps?: unknown }[]
  }
  const like = demo.fasteners.find(({ face }) => face === 'sump')
  const columns = 20
  const rows = Math.ceil(count / columns)
  const fasteners = Array.from({ length: count }, (_, index) => ({
    ...like,
    id: `f${index + 1}`,
    number: String(index + 1),
    at: [
      `${((index % columns) * 800) / (columns - 1)} mm`,
      `${-300 + (Math.floor(index / columns) * 600) / (rows - 1)} mm`,
    ],
  }))
  const outline = [
    ['-40 mm', '-340 mm'],
    ['840 mm', '-340 mm'],
    ['840 mm', '340 mm'],
    ['-40 mm', '340 mm'],
  ]
  const sump = { id: 'sump', name: 'Sump', shows: 'flange', workedFrom: 'below', outline }
  return JSON.stringify({
    ...demo,
    id: 'many',
    name: 'Many fasteners',
    case: { ...demo.case, faces: [sump], dowels: [], oilPassages: [] },
    fits: [],
    endFloat: undefined,
    rodSideClearance: undefined,
    fasteners,
    procedures: [
      {
        id: 'all',
        name: 'All',
        face: 'sump',
        orders: [{ id: 'in-rows', sequence: fasteners.map(({ id }) => id) }],
        passes: [{ kind: 'torque', order: 'in-rows', target: '8 N·m', least: '7 N·m', most: '9 N·m' }],
      },
    ],
    beads: [],
    steps: [{ id: 'all', name: 'All', kind: 'run-procedure', procedure: 'all' }],
    cautions: demo.cautions.filter(({ steps }) => steps === undefined),
  })
}
