type None = Record<never, never>
type AtHost = { host: string }
type InDatabase = { database: string }
type OfShop = { shop: string; version: number; known: number }

/** What is wrong with the address of an archive. The address itself is not repeated: a password may stand in it. */
const addressFaults = {
  unreadable: 'it is no address',
  scheme: 'it does not begin with postgres://',
  host: 'no server is named in it',
  user: 'no user is named in it, as “bench” is in postgres://bench@server/database',
  database: 'no database is named at its end',
  shop: 'the name of the shop may have small letters, digits and _ only, and begins with a letter',
}

const certificateFaults = {
  untrusted: 'was not issued by an authority that is known here',
  'other-name': 'was issued for another name',
  expired: 'is no longer valid, or not yet',
}

const passwordFileFaults = {
  open: 'can be read by other users. Take their rights away (chmod 600), and give the role a new password',
  unreadable: 'cannot be read. Give this user, and no other, the right to read it',
}

/** Sentences about the archive that the benches of a shop share. What is confirmed here is never touched by any of them. */
export const shopWords = {
  'shop-address-wrong': ({ fault }: { fault: keyof typeof addressFaults }) =>
    `The address of the shop’s archive cannot be used: ${addressFaults[fault]}. Write it as it was printed when the archive was set up.`,
  'shop-host-unknown': ({ host }: AtHost) =>
    `No server is known by the name ${host}. Look whether it is spelled right and the network is connected.`,
  'shop-unreachable': ({ host, code }: AtHost & { code: string }) =>
    `The shop’s archive at ${host} does not answer (${code}). What is confirmed here is kept, and sent when it answers again. Is the server switched on, and the network connected?`,
  'shop-password-missing': ({ user }: { user: string }) =>
    `The archive wants a password for ${user}, and none is kept here. Type it on the page “Shop”, or give it in PGPASSWORD.`,
  'shop-password-wrong': ({ user, host }: AtHost & { user: string }) =>
    `The archive at ${host} does not take the password of ${user}, or knows no such user. Type the password again as it was printed when the archive was set up.`,
  'shop-not-let-in': ({ user, host }: AtHost & { user: string }) =>
    `The server at ${host} does not let ${user} in from this computer. Have a line for it added to the server’s pg_hba.conf.`,
  'shop-tls-missing': ({ host }: AtHost) =>
    `The server at ${host} does not encrypt, so nothing was sent, not even the password. Have TLS switched on there.`,
  'shop-certificate': ({ host, fault }: AtHost & { fault: keyof typeof certificateFaults }) =>
    `The certificate of the server at ${host} ${certificateFaults[fault]}, so nothing was sent, not even the password. Give the file of the authority that issued it, or have the certificate put right.`,
  'shop-authority-unreadable': ({ file }: { file: string }) =>
    `The file of the authority, ${file}, cannot be read, or holds no certificate in PEM. Choose the file again.`,
  'shop-password-file': ({ file, fault }: { file: string; fault: keyof typeof passwordFileFaults }) =>
    `The file with the password of the archive, ${file}, ${passwordFileFaults[fault]}.`,
  'shop-server-old': ({ host, version, least }: AtHost & { version: string; least: number }) =>
    `The server at ${host} is PostgreSQL ${version}; the archive needs ${least} or later. Have a newer one installed.`,
  'shop-database-missing': ({ database }: InDatabase) =>
    `The server has no database ${database}. Look whether the name is spelled right, or have it created.`,
  'shop-database-foreign': ({ database, shop }: InDatabase & { shop: string }) =>
    `In the database ${database}, the schema ${shop} belongs to another program. It was left as it is. Set the archive up under another name.`,
  'shop-name-taken': ({ shop }: { shop: string }) =>
    `Another database of this server has a shop called ${shop}, and its roles would be let in here too. Set this one up under another name: add ?shop=NAME to the address.`,
  'shop-not-set-up': ({ database, shop }: InDatabase & { shop: string }) =>
    `The database ${database} has no archive of the shop ${shop}, or this user may not see it. Have it set up by its owner with: npm run shop -- init`,
  'shop-schema-newer': ({ shop, version, known }: OfShop) =>
    `The archive of ${shop} was made by a newer Bedplate (version ${version} of its tables; this one knows ${known}). Nothing was changed. What is confirmed here waits until this program is the newer one.`,
  'shop-schema-older': ({ shop, version, known }: OfShop) =>
    `The archive of ${shop} has version ${version} of its tables, and this program needs ${known}. Have its owner run: npm run shop -- migrate`,
  'shop-not-allowed': ({ user }: { user: string }) =>
    `The archive does not allow ${user} to do that. A reader’s role sends nothing, and an archive is set up by its owner’s alone.`,
  'shop-full': ({ host }: AtHost) =>
    `The disk of the archive at ${host} is full. What is confirmed here is kept, and sent when there is room. Have room made on the server.`,
  'shop-crowded': ({ host }: AtHost) =>
    `The server at ${host} has no connection left for this bench. It is tried again. If it stays so, have max_connections raised there.`,
  'shop-server-fault': ({ host, code }: AtHost & { code: string }) =>
    `The archive at ${host} could not do that, and kept nothing of it (SQLSTATE ${code}). It is tried again. If it stays so, have the server’s log looked at.`,
  'shop-answer-unreadable': ({ host }: AtHost) =>
    `What the archive at ${host} answered cannot be read, so nothing of it was taken in. What is confirmed here is kept. Is the address the archive’s, and not another server’s? If so, have its owner look at it.`,
  'shop-build-altered': ({ name, entry }: { name: string; entry: number }) =>
    `What the archive has of ${name} is not as it was confirmed: entry ${entry} was altered, or does not follow the one before it. Nothing of that was taken in. Have the owner of the archive look at it, and verify the build at the bench that recorded it.`,
  'shop-spec-missing': (_: None) =>
    'The archive has not been sent the spec that this build rests on, so it took no entries. The spec is sent first.',
  'shop-entry-refused': ({ entry }: { entry: number }) =>
    `The archive did not take entry ${entry}: it does not follow the entry before it, or is not as it was confirmed. Verify the record here.`,
  'shop-fork-unknown': (_: None) =>
    'There is no such fork in the archive, or it was settled. Look at the list again.',
}
