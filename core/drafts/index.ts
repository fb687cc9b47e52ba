export * from './orders/index.ts'
export * from './placing/index.ts'
