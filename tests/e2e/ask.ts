import { expect, type Page } from '@playwright/test'
import type { Answer, Input, Output, Preferences, RequestName } from '../../core/contract/index.ts'
import { sentenceOf } from '../../core/problem/index.ts'
import type { Bridge } from '../../renderer/client/bridge-client.ts'
import type { Ask, Work } from './hosts/host.ts'

/** The way from the tests to the host of a page, for those that have one which does not lead through the page. */
const ways = new WeakMap<Page, () => Ask | undefined>()

export function askBeside(page: Page, way: () => Ask | undefined): void {
  ways.set(page, way)
}

/** Asks the host under test, whichever it is: beside its page where it can be, else on the window's own way. */
export async function ask<Name extends RequestName>(
  page: Page,
  name: Name,
  input: Input<Name>,
): Promise<Output<Name>> {
  const beside = ways.get(page)?.()
  if (beside !== undefined) return beside(name, input)
  const answer = await page.evaluate(
    async ([name, text]) => {
      const { bedplate }: { bedplate?: Bridge } = window
      if (bedplate) return JSON.parse(String(await bedplate.request(name, text))) as unknown
      const token = sessionStorage.getItem('bedplate-token') ?? ''
      const headers = { 'content-type': 'application/json', 'x-bedplate-token': token }
      const response = await fetch(`/request/${name}`, { method: 'POST', headers, body: text })
      return (await response.json()) as unknown
    },
    [name, JSON.stringify(input)] as const,
  )
  return valueOf(name, answer as Answer<Name>)
}

/** Waits until the host has written down what was begun in a build and is not confirmed: it is kept beside the work, which goes on. */
export async function whenKept(
  page: Page,
  isIt: (unfinished: Preferences['unfinished'][number]) => boolean,
): Promise<void> {
  await expect
    .poll(async () => (await ask(page, 'preferences.read', {})).unfinished.some(isIt), 'is kept')
    .toBe(true)
}

/** Asks a local host at its address, as its page would, before there is a page. */
export async function askAt<Name extends RequestName>(
  address: string,
  name: Name,
  input: Input<Name>,
): Promise<Output<Name>> {
  const { origin, hash } = new URL(address)
  const headers = { 'content-type': 'application/json', 'x-bedplate-token': hash.slice(1), origin }
  const response = await fetch(`${origin}/request/${name}`, {
    method: 'POST',
    headers,
    body: JSON.stringify(input),
  })
  return valueOf(name, (await response.json()) as Answer<Name>)
}

/** Does the work by way of a page that is shown already, and loads it again: it shows what was done. */
export async function workedOn(page: Page, work: Work | undefined): Promise<void> {
  if (work === undefined) return
  await work((name, input) => ask(page, name, input))
  await page.reload()
}

/** What was answered; a refusal is thrown, with its sentence. */
export function valueOf<Name extends RequestName>(name: Name, answer: Answer<Name>): Output<Name> {
  if (!answer.ok) throw new Error(`${name}: ${sentenceOf(answer.problem)}`)
  return answer.value
}
