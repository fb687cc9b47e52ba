/**
 * The requests that the preload lets through, as bare names: the preload stands in every page's process and takes
 * nothing along that it does not need, zod least of all. A test holds them equal to the contract's.
 */
export const requestNames: readonly string[] = [
  'host.read',
  'preferences.read',
  'preferences.keep',
  'engines.list',
  'engines.read',
  'builds.list',
  'builds.start',
  'builds.open',
  'builds.act',
  'builds.find',
  'builds.export',
  'builds.import',
  'builds.csv',
  'backups.list',
  'backups.make',
  'backups.keep-in',
  'backups.restore',
  'people.list',
  'people.keep',
  'people.remove',
  'people.enter',
  'people.leave',
  'verification.start',
  'verification.read',
  'verification.stop',
  'wrenches.list',
  'wrenches.keep',
]
