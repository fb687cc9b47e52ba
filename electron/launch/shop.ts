import { shopCommand } from './shop-command.ts'
import { languageOfTerminal, speak, systemLanguage } from './spoken.ts'

// `npm run shop`
await speak(languageOfTerminal(process.env, systemLanguage()))
const { exitCode, text } = await shopCommand(process.argv.slice(2), process.env)
;(exitCode === 0 ? console.log : console.error)(text)
process.exitCode = exitCode
