export { contentPolicy, guardHeaders } from './headers.ts'
export { pageAt, readPages } from './pages.ts'
export type { Page, Pages } from './pages.ts'
