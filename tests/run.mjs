#!/usr/bin/env node
// `npm test`, `npm run published`, `npm run e2e`. Plain JavaScript, because nothing may be installed yet.
import { runPrepared } from '../electron/launch/prepare.mjs'

await runPrepared(new URL('./run/main.ts', import.meta.url), process.argv.slice(2))
