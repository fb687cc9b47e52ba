// `npm run package`. Plain JavaScript, as start.mjs is.
import { runPrepared } from './prepare.mjs'

await runPrepared(new URL('../packaging/main.ts', import.meta.url), process.argv.slice(2))
