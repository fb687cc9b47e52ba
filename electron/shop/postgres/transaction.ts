import postgres, { type Sql, type TransactionSql } from 'postgres'

/**
 * One transaction. Where the line is lost in it, the client would write its ROLLBACK to a socket that is gone, in a moment of its own, and
 * nothing could catch what it throws then: the whole program would end. (postgres 3.4.9: `scope` in index.js, `nextWrite` in
 * connection.js.) So nothing is written after that: the client itself gives the transaction up once the line is closed, and the
 * server takes it back.
 */
export function transaction<Value>(
  sql: Sql,
  work: (inside: TransactionSql) => Promise<Value>,
): Promise<Value> {
  return sql.begin(async (inside) => {
    try {
      return await work(inside)
    } catch (error) {
      if (isLineLost(error)) return new Promise<never>(() => {})
      throw error
    }
  }) as Promise<Value>
}

/** Errors of sockets and of the client have codes; those of the server are of a class of their own. */
function isLineLost(error: unknown): boolean {
  return (
    error instanceof Error &&
    !(error instanceof postgres.PostgresError) &&
    'code' in error &&
    typeof error.code === 'string'
  )
}
