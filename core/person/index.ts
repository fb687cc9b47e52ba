export { isReadableName, nameKey } from './name-key.ts'
