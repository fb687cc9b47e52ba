// `npm run audit`. Plain JavaScript, as start.mjs is.
import { runPrepared } from './prepare.mjs'

await runPrepared(new URL('./audit.ts', import.meta.url), process.argv.slice(2))
