export * from '../../plane/index.ts'
