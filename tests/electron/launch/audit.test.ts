import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { specFileOf } from '../../../core/drafts/index.ts'
import { sha256 } from '../../../electron/store/index.ts'
import { afterAll, describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../../..')
const folder = mkdtempSync(join(tmpdir(), 'bedplate-audit-'))
afterAll(() => rmSync(folder, { recursive: true }))

function auditOf(...files: readonly string[]) {
  const run = spawnSync(process.execPath, [join(root, 'electron/launch/audit.mjs'), ...files], {
    encoding: 'utf8',
    cwd: folder,
    env: { ...process.env, INIT_CWD: folder },
  })
  return { status: run.status, lines: run.stdout.trimEnd().split('\n'), stderr: run.stderr }
}

function spoilt(name: string, spoil: (text: string) => string): string {
  const text = readFileSync(join(root, 'specs/strath-6.json'), 'utf8')
  const changed = spoil(text)
  expect(changed).not.toBe(text)
  writeFileSync(join(folder, name), changed)
  return name
}

describe('npm run audit', () => {
  it('ends with 0 where nothing is wrong or doubtful', () => {
    const file = join(root, 'specs/strath-6.json')
    const { status, lines } = auditOf(file)
    expect(lines).toEqual([`${file}: can be built, nothing doubtful`])
    expect(status).toBe(0)
  })

  it('reads a spec that was saved for another bench, and tells one that was altered on the way', () => {
    const saved = specFileOf(readFileSync(join(root, 'specs/strath-6.json'), 'utf8'), sha256)
    writeFileSync(join(folder, 'sent.bedplate-spec'), saved)
    writeFileSync(join(folder, 'altered.bedplate-spec'), saved.replace('0.', '1.'))
    const { status, lines } = auditOf('sent.bedplate-spec', 'altered.bedplate-spec')
    expect(lines).toEqual([
      'sent.bedplate-spec: can be built, nothing doubtful',
      'altered.bedplate-spec: cannot be built, 1 fault',
      expect.stringMatching(/^ {2}fault {2}.*its hash differs/),
    ])
    expect(status).toBe(1)
  })

  it('ends with 1 and names the place of each fault, in files named from where npm was called', () => {
    const colour = spoilt('colour.json', (text) =>
      text.replace(/"colour": "#[0-9A-F]{6}"/, '"colour": "#12"'),
    )
    const newer = spoilt('newer.json', (text) => text.replace('"bedplateSpec": 1', '"bedplateSpec": 2'))
    const { status, lines } = auditOf(colour, 'not-there.json', '.', newer)
    expect(lines).toEqual([
      'colour.json: cannot be built, 1 fault',
      expect.stringMatching(/^ {2}fault {2}fits\[0\]\.grades\[0\]\.colour: .*“#12”/),
      'not-there.json: cannot be built, 1 fault',
      '  fault  not-there.json is not there. Check its name (ENOENT).',
      '.: cannot be built, 1 fault',
      '  fault  . is a folder. Name the files in it.',
      'newer.json: cannot be built, 1 fault',
      expect.stringMatching(/^ {2}fault {2}bedplateSpec: .*open one of a newer program with that/),
    ])
    expect(status).toBe(1)
  })

  it('ends with 0 where something is only doubtful, and says it', () => {
    const turn = spoilt('turn.json', (text) =>
      text.replace(
        /"target": "45 °",\s*"least": "42 °",\s*"most": "48 °"/g,
        '"target": "240 °", "least": "230 °", "most": "250 °"',
      ),
    )
    const { status, lines } = auditOf(turn)
    expect(lines[0]).toMatch(/^turn\.json: can be built, \d doubts?$/)
    expect(lines[1]).toMatch(/^ {2}doubt {2}procedures\[1\]\.passes\[\d\]\.target: Case bolts, pass \d/)
    expect(status).toBe(0)
  })

  it('lists a doubt that somebody accepted as accepted, with the reason', () => {
    const file = spoilt('accepted.json', (text) => {
      const spec = JSON.parse(text) as { cautions: unknown[]; accepted?: unknown }
      spec.cautions.shift()
      const accepted = { code: 'standing-caution-missing', path: 'cautions', reason: 'It hangs on the wall' }
      return JSON.stringify({ ...spec, accepted: [{ ...accepted, by: 'Bo Lind', on: '2026-04-01' }] })
    })
    expect(auditOf(file).lines).toEqual([
      'accepted.json: can be built, nothing doubtful',
      expect.stringMatching(
        /^ {2}accepted {2}cautions: .* Accepted by Bo Lind on 2026-04-01, because: It hangs/,
      ),
    ])
  })

  it('ends with 2 and says how it is used where no file is named', () => {
    const { status, stderr } = auditOf()
    expect(stderr).toContain('npm run audit -- FILE')
    expect(status).toBe(2)
  })
})
