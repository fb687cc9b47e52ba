#!/usr/bin/env node
// `npm start`. Plain JavaScript, because it runs on whatever Node is there before anything is installed.
import { parseOptions } from './options.mjs'
import { runPrepared } from './prepare.mjs'
import { wordsFor } from './words/index.mjs'

const typed = process.argv.slice(2)
const words = wordsFor(typed)
const answer = parseOptions(words, typed)
if (answer.kind === 'help') {
  console.log(words.usage)
} else if (answer.kind === 'refused') {
  console.error(answer.why)
  process.exitCode = 2
} else {
  // The title takes the place of the command line, which anybody on this machine can read and in which a password may stand.
  if (answer.options.shop !== undefined) process.title = 'bedplate'
  await runPrepared(new URL('./main.ts', import.meta.url), typed)
}
