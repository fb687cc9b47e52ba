import { describe, expect, it } from 'vitest'
import { FullScreen, type ScreenPage } from '../../../renderer/build-window/full-screen.ts'

/** A page whose browser answers only when it is let. */
class Page extends EventTarget implements ScreenPage {
  fullscreenElement: Element | null = null
  readonly asked: ('enter' | 'exit')[] = []
  readonly documentElement = {
    requestFullscreen: () => this.#ask('enter'),
  }
  exitFullscreen() {
    return this.#ask('exit')
  }
  #ask(what: 'enter' | 'exit') {
    this.asked.push(what)
    return Promise.resolve()
  }
  /** The browser does the oldest thing that it was asked for. */
  answer() {
    this.change(this.asked.shift() === 'enter')
  }
  change(isFull: boolean) {
    this.fullscreenElement = isFull ? ({} as Element) : null
    this.dispatchEvent(new Event('fullscreenchange'))
  }
}

function watched() {
  const page = new Page()
  let left = 0
  const screen = new FullScreen(() => (left += 1), page)
  const stop = screen.watch()
  return { page, screen, stop, left: () => left }
}

describe('the whole screen', () => {
  it('is taken, and a person who leaves it by the browser’s key leaves the view', () => {
    const { page, screen, left } = watched()
    screen.take()
    page.answer()
    expect(page.fullscreenElement).not.toBeNull()
    expect(left()).toBe(0)
    page.change(false)
    expect(left()).toBe(1)
    expect(page.asked).toEqual([])
  })

  it('is not left for the view that follows at once when the browser answers late', () => {
    const { page, screen, left } = watched()
    screen.take()
    page.answer()
    screen.leave()
    screen.take()
    page.answer()
    expect(left()).toBe(0)
    page.answer()
    expect(page.fullscreenElement).not.toBeNull()
    expect(left()).toBe(0)
  })

  it('is given back where it came only after the view was left', () => {
    const { page, screen, left } = watched()
    screen.take()
    screen.leave()
    page.answer()
    page.answer()
    expect(page.fullscreenElement).toBeNull()
    expect(left()).toBe(0)
    expect(page.asked).toEqual([])
  })

  it('is asked for again after a browser that would not let go', async () => {
    const { page, screen, stop } = watched()
    screen.take()
    page.answer()
    page.exitFullscreen = () => Promise.reject(new Error('not now'))
    screen.leave()
    await Promise.resolve()
    await Promise.resolve()
    page.exitFullscreen = () => {
      page.change(false)
      return Promise.resolve()
    }
    stop()
    expect(page.fullscreenElement).toBeNull()
  })
})
