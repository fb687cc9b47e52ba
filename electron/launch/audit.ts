import { sentenceIn } from '../../core/problem/index.ts'
import { en } from '../../core/words/index.ts'
import { readEngine } from '../requests/specs.ts'

// `npm run audit -- FILE …`: what is wrong or doubtful in engine specs, for people and for a continuous check of them.
const files = process.argv.slice(2)
// npm changes to the folder of the project and keeps here where it was called.
const cwd = process.env.INIT_CWD ?? process.cwd()

if (files.length === 0) {
  console.error(en.auditReport.usage)
  process.exitCode = 2
}
for (const file of files) {
  const engine = readEngine(cwd, file)
  const faults = engine.kind === 'faulty' ? engine.faults : []
  console.log(en.auditReport.heading({ file, faults: faults.length, doubts: engine.doubts.length }))
  for (const [weight, problems] of [
    ['fault', faults],
    ['doubt', engine.doubts],
  ] as const)
    for (const problem of problems)
      console.log(en.auditReport.line({ weight, place: problem.path, sentence: sentenceIn(en, problem) }))
  if (faults.length > 0) process.exitCode = 1
}
