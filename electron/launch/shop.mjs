// `npm run shop`. Plain JavaScript, as start.mjs is.
import { runPrepared } from './prepare.mjs'

await runPrepared(new URL('./shop.ts', import.meta.url), process.argv.slice(2))
