/** The names that a shop has in its database: its schema, and the roles of those who may send and those who may read. */
export interface ShopNames {
  readonly schema: string
  readonly bench: string
  readonly reader: string
}

/** One step of the archive’s schema, carried out by its owner’s role in one transaction, with the schema as the search path. */
export interface ShopMigration {
  readonly version: number
  readonly sql: (names: ShopNames) => string
}
