import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { graphOf, importsByFile } from './files.ts'
import { withPicture } from './picture.ts'

// `npm run layers`: draws the layers and their folders in DEVELOPERS.md as the imports have them.
const root = join(import.meta.dirname, '../..')
const path = join(root, 'DEVELOPERS.md')
writeFileSync(path, withPicture(readFileSync(path, 'utf8'), graphOf(importsByFile(root))))
