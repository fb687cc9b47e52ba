export { withAccepted, withoutAccepted, type Acceptance } from './accept.ts'
