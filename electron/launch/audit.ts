import { acceptedDoubts } from '../../core/audit/index.ts'
import { sentenceIn } from '../../core/problem/index.ts'
import { readEngine } from '../requests/specs.ts'
import { languageOfTerminal, speak, systemLanguage, words } from './spoken.ts'

// `npm run audit -- FILE …`: what is wrong or doubtful in engine specs, for people and for a continuous check of them.
const files = process.argv.slice(2)
// npm changes to the folder of the project and keeps here where it was called.
const cwd = process.env.INIT_CWD ?? process.cwd()

await speak(languageOfTerminal(process.env, systemLanguage()))
if (files.length === 0) {
  console.error(words.auditReport.usage)
  process.exitCode = 2
}
for (const file of files) {
  const engine = readEngine(cwd, file)
  const faults = engine.kind === 'faulty' ? engine.faults : []
  console.log(words.auditReport.heading({ file, faults: faults.length, doubts: engine.doubts.length }))
  for (const [weight, problems] of [
    ['fault', faults],
    ['doubt', engine.doubts],
  ] as const)
    for (const problem of problems)
      console.log(
        words.auditReport.line({ weight, place: problem.path, sentence: sentenceIn(words, problem) }),
      )
  for (const accepted of engine.spec === null ? [] : acceptedDoubts(engine.spec)) {
    const sentence = `${sentenceIn(words, accepted.doubt)} ${words.auditReport.because(accepted)}`
    console.log(words.auditReport.line({ weight: 'accepted', place: accepted.path, sentence }))
  }
  if (faults.length > 0) process.exitCode = 1
}
