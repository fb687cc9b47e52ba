import type { BackupList, Verification, WrittenWrench } from '../../core/contract/index.ts'
import { done, problem } from '../../core/problem/index.ts'
import type { MemoryHandlers } from './memory-client.ts'

/** Invented wrenches: one with an adapter, one whose calibration ran out. */
export const sampleWrenches: readonly WrittenWrench[] = [
  {
    id: 'click-100',
    name: 'Click wrench 20–100',
    range: { least: '20 N·m', most: '100 N·m' },
    scale: { unit: 'N·m', step: 0.5 },
    made: { type: 'II', class: 'A' },
    length: '450 mm',
    adapters: [{ id: 'crowfoot', name: 'Crowfoot 17', offset: '40 mm', angle: '0 °' }],
    calibration: { on: '2026-03-31', cycles: 1200 },
  },
  {
    id: 'dial-200',
    name: 'Dial wrench, inch drive',
    range: { least: '15 lbf·ft', most: '150 lbf·ft' },
    scale: { unit: 'lbf·ft', step: 1 },
    adapters: [],
    calibration: { on: '2024-05-02', cycles: 4100 },
  },
]

export const sampleBackups: BackupList = {
  backups: (['data-folder', 'second-folder'] as const).map((place, index) => ({
    name: `record-2026-03-0${9 - index}.db`,
    at: `2026-03-0${9 - index}T17:30:00.000Z`,
    ...{ builds: 14 - index, entries: 2310 - 180 * index, head: '91c4e07f2b5d83aa' },
    ...{ sizeBytes: 1_480_000, place, own: index === 0, broken: 0 },
  })),
  secondFolder: '/media/share/bedplate',
  running: false,
  trouble: null,
}

/** Followed to its end, with one build that was altered. */
export const sampleVerification: Extract<Verification, { state: 'done' }> = {
  state: 'done',
  build: null,
  at: '2026-03-09T12:00:00.000Z',
  ...{ builds: 14, entries: 2310, head: '91c4e07f2b5d83aa', witnesses: 9, lists: false },
  breaks: [
    {
      build: '2026-007',
      number: '2026-007',
      problem: problem('build-chain-broken', { entry: 31 }),
    },
  ],
}

/** Answers about the record as a whole. */
export const sampleRecord: MemoryHandlers = {
  'host.doctor': () =>
    done([
      {
        subject: 'host',
        state: 'good',
        says: { code: 'host', facts: { host: 'local', why: { code: 'noDisplay', facts: {} } } },
      },
      { subject: 'disk', state: 'look', says: { code: 'disk-free', facts: { megabytes: 900 } } },
      { subject: 'backup', state: 'bad', says: { code: 'backup-none', facts: { secondFolder: null } } },
    ]),
  'backups.list': () => done(sampleBackups),
  'verification.read': () => done(sampleVerification),
}
