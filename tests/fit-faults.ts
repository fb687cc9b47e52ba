/** A text on the page, the lines of it that are to be seen, and how far each may be seen. */
interface Shown {
  readonly element: Element
  readonly text: string
  readonly lines: readonly DOMRect[]
}

/**
 * Texts of a page that do not fit, a line each: cut off where nobody can scroll to the rest, beside the window, or one over
 * another. It runs in the page, so all that it uses is in it.
 */
export function fitFaults(): readonly string[] {
  const faults: string[] = []
  /** How far a text may stand out, for edges of letters and rounding. Pixels. */
  const slack = 1.5
  const shown: Shown[] = []

  const said = (text: string) => `“${text.replaceAll(/\s+/g, ' ').trim().slice(0, 70)}”`
  const placeOf = (element: Element): string => {
    const names: string[] = []
    for (let at: Element | null = element; at !== null && names.length < 4; at = at.parentElement)
      names.unshift(
        [at.tagName.toLowerCase(), ...[...at.classList].filter((name) => !name.startsWith('svelte-'))].join(
          '.',
        ),
      )
    return names.join(' > ')
  }

  const scrollingAcross = selectorsThatScrollAcross()
  for (const element of document.body.querySelectorAll('*')) {
    if (element.closest('script, style, option, title, desc') !== null) continue
    // What stands over the parts of the gallery is not the program's.
    if (element.matches('section[aria-label] > h2')) continue
    if (!element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue
    if (element instanceof HTMLInputElement && element.value === '' && element.placeholder !== '')
      lookAtPlaceholder(element)
    const nodes = [...element.childNodes].filter(
      (node) => node.nodeType === Node.TEXT_NODE && node.textContent!.trim() !== '',
    )
    if (nodes.length === 0) continue
    const text = nodes.map((node) => node.textContent).join(' ')
    const lines = nodes.flatMap((node) => {
      const range = document.createRange()
      range.selectNodeContents(node)
      return [...range.getClientRects()].filter(({ width, height }) => width > 0.5 && height > 0.5)
    })
    const seen = lines.flatMap((line) => within(element, text, line) ?? [])
    if (seen.length > 0) shown.push({ element, text, lines: seen })
  }
  for (const [index, one] of shown.entries())
    for (const other of shown.slice(index + 1)) lookAtBoth(one, other)
  return [...new Set(faults)]

  /** The part of a line that is to be seen, null for none; a fault where the rest cannot be scrolled to. */
  function within(element: Element, text: string, line: DOMRect): DOMRect | null {
    let { left, right, top, bottom } = line
    let [scrollsAcross, scrollsDown] = [false, false]
    for (let at: Element | null = element; at !== null && at !== document.body; at = at.parentElement) {
      const { overflowX, overflowY, position, clipPath } = getComputedStyle(at)
      const box = at.getBoundingClientRect()
      // Said to screen readers alone.
      if (clipPath !== 'none' || (box.width <= 1 && overflowX !== 'visible')) return null
      if (overflowX !== 'visible' && at.clientWidth > 0) {
        scrollsAcross ||= isToScrollAcross(at) || isWholeInTitle(at, text)
        if (!scrollsAcross && (left < box.left - slack || right > box.right + slack))
          faults.push(
            `cut off ${said(text)} at ${placeOf(element)}, by ${at.tagName} ${Math.round(Math.max(box.left - left, right - box.right))} px`,
          )
        ;[left, right] = [Math.max(left, box.left), Math.min(right, box.right)]
      }
      if (overflowY !== 'visible' && at.clientHeight > 0) {
        scrollsDown ||= overflowY === 'auto' || overflowY === 'scroll'
        // A line is higher than its letters.
        const over = Math.max(box.top - top, bottom - box.bottom) - line.height * 0.25
        if (!scrollsDown && over > slack)
          faults.push(
            `cut off below ${said(text)} at ${placeOf(element)}, by ${at.tagName} ${Math.round(over)} px`,
          )
        ;[top, bottom] = [Math.max(top, box.top), Math.min(bottom, box.bottom)]
      }
      if (position === 'fixed') break
    }
    if (!scrollsAcross && (line.left < -slack || line.right > innerWidth + slack))
      faults.push(`beside the window ${said(text)} at ${placeOf(element)}`)
    return right - left > 1 && bottom - top > 1 ? new DOMRect(left, top, right - left, bottom - top) : null
  }

  /**
   * Whether a style sheet says that a part may be scrolled sideways: what has `overflow-y: auto` alone scrolls that way too (CSS
   * Overflow 3, 3.1: `visible` becomes `auto`), which nobody looks for.
   */
  function isToScrollAcross(element: Element): boolean {
    return scrollingAcross.some((selector) => element.matches(selector))
  }

  function selectorsThatScrollAcross(): readonly string[] {
    const ofRules = (rules: CSSRuleList): readonly string[] =>
      [...rules].flatMap((rule) => [
        ...(rule instanceof CSSStyleRule && /^(auto|scroll)$/.test(rule.style.overflowX)
          ? [rule.selectorText]
          : []),
        ...('cssRules' in rule ? ofRules(rule.cssRules as CSSRuleList) : []),
      ])
    return [...document.styleSheets].flatMap((sheet) => ofRules(sheet.cssRules))
  }

  /** What gives way has all of its text where a pointer asks for it. */
  function isWholeInTitle(element: Element, text: string): boolean {
    const title = element.closest('[title]')?.getAttribute('title') ?? ''
    return getComputedStyle(element).textOverflow === 'ellipsis' && title.includes(text.trim())
  }

  function lookAtPlaceholder(input: HTMLInputElement) {
    const style = getComputedStyle(input)
    const pen = document.createElement('canvas').getContext('2d')!
    const { fontSize } = getComputedStyle(input, '::placeholder')
    pen.font = `${style.fontWeight} ${fontSize} ${style.fontFamily}`
    const room = input.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight)
    const wanted = pen.measureText(input.placeholder).width
    if (wanted > room + slack)
      faults.push(
        `cut off ${said(input.placeholder)} in a field at ${placeOf(input)}, ${Math.round(wanted - room)} px`,
      )
  }

  function lookAtBoth(one: Shown, other: Shown) {
    if (one.element.contains(other.element) || other.element.contains(one.element)) return
    for (const a of one.lines)
      for (const b of other.lines) {
        const across = Math.min(a.right, b.right) - Math.max(a.left, b.left)
        // Of a line its middle half is taken: letters do not fill it.
        const half = (a.height + b.height) / 4
        const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) - half
        if (across <= 2 || down <= 0) continue
        const x = (Math.max(a.left, b.left) + Math.min(a.right, b.right)) / 2
        const y = (Math.max(a.top, b.top) + Math.min(a.bottom, b.bottom)) / 2
        if (isCoveredWhereSeen(one.element, other.element, x, y)) continue
        faults.push(`over each other ${said(one.text)} and ${said(other.text)} at ${placeOf(one.element)}`)
        return
      }
  }

  /** What lies on what is asked where it is in sight: there what keeps to the edge of the window may be elsewhere. */
  function isCoveredWhereSeen(one: Element, other: Element, x: number, y: number): boolean {
    const before = scrollY
    if (y < 0 || y > innerHeight) scrollTo({ top: before + y - innerHeight / 2, behavior: 'instant' })
    const moved = scrollY - before
    const pile = moved === 0 ? [] : document.elementsFromPoint(x, y - moved)
    const isApart = pile.includes(one) !== pile.includes(other)
    const covered = isApart || isCovered(one, other, x, y - moved)
    scrollTo({ top: before, behavior: 'instant' })
    return covered
  }

  /** Whether something opaque lies between the two at a point, such as the ground of a dialog. */
  function isCovered(one: Element, other: Element, x: number, y: number): boolean {
    const pile = document.elementsFromPoint(x, y)
    const at = [one, other].map((element) => pile.indexOf(element))
    if (at.includes(-1))
      return pile.some((each) => isOpaque(each) && !each.contains(one) !== !each.contains(other))
    const [upper, lower] = at.toSorted((a, b) => a - b) as [number, number]
    return pile.slice(upper, lower).some((each) => isOpaque(each))
  }

  function isOpaque(element: Element): boolean {
    const { backgroundColor } = getComputedStyle(element)
    return backgroundColor !== 'transparent' && !backgroundColor.endsWith(', 0)')
  }
}

/** Lists that cut what is chosen in them, a line each: what is beside their arrow is not seen. Runs in the page. */
export function cutChoices(): readonly string[] {
  const arrow = 20
  return [...document.querySelectorAll('select')].flatMap((select) => {
    if (!select.checkVisibility()) return []
    const style = getComputedStyle(select)
    const pen = document.createElement('canvas').getContext('2d')!
    pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`
    const text = select.selectedOptions[0]?.label ?? ''
    const room = select.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) - arrow
    const over = pen.measureText(text).width - room
    return over > 1.5 ? [`cut off “${text}” in a list, ${Math.round(over)} px`] : []
  })
}

/** States of an entry in which nothing is drawn, a line each: no text, picture or field of any size. Runs in the page. */
export function emptyStates(): readonly string[] {
  const states = document.querySelectorAll('[data-shown] > section[aria-label], [data-shown].screen')
  if (states.length === 0) return ['nothing is shown']
  return [...states].filter((state) => !isDrawn(state)).map((state) => `${nameOf(state)}: nothing is drawn`)

  function nameOf(state: Element): string {
    return state.getAttribute('aria-label') ?? 'the window'
  }

  function isDrawn(state: Element): boolean {
    return [...state.querySelectorAll('*')].some((part) => {
      if (part.matches('section[aria-label] > h2')) return false
      const shows =
        part.matches('canvas, svg, img, input, button, select, textarea') ||
        [...part.childNodes].some(
          (node) => node.nodeType === Node.TEXT_NODE && node.textContent!.trim() !== '',
        )
      const { width, height } = part.getBoundingClientRect()
      return shows && width > 1 && height > 1 && part.checkVisibility({ visibilityProperty: true })
    })
  }
}

/** Whether a window has no way into the help: neither its button nor, through that, F1. A dialog over it has none of its own. Runs in the page. */
export function isWithoutHelp(): boolean {
  const isWindow = document.querySelector('[data-shown].screen') !== null
  return isWindow && document.querySelector('[aria-keyshortcuts="F1"], dialog[open], [role=dialog]') === null
}

/**
 * What stands outside the brackets of the language that nobody speaks, has a word without its accents, is no data of the gallery
 * and not said to be the same in every language, a line each. Runs in the page.
 */
export function outsideBrackets(): readonly string[] {
  const inPage = globalThis as unknown as {
    readonly sampleData: ReadonlySet<string>
    /** Put in order once for as many as they were: there are thousands. */
    sorted?: { readonly size: number; readonly data: readonly string[] }
  }
  const spaced = (text: string) => text.replaceAll(/\s+/g, ' ').trim()
  const longestFirst = dataLongestFirst()
  /** The texts of the help are a table of their own, which stays English. */
  const notLookedAt = 'script, style, section[aria-label] > h2, title, [translate="no"], [data-guide]'
  const found = new Set<string>()
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const parent = node.parentElement!
    if (parent.closest(notLookedAt) !== null) continue
    const outside = outsideOf(node.textContent ?? '')
    if (!hasWord(outside)) continue
    // A drawing breaks a long text into several.
    if (parent.closest('text') !== null && longestFirst.some((text) => ` ${text} `.includes(` ${outside} `)))
      continue
    const left = longestFirst.reduce(
      (rest, text) => (rest.includes(text) ? without(rest, text) : rest),
      outside,
    )
    if (hasWord(left)) found.add(`“${outside}” at ${parent.tagName.toLowerCase()}`)
  }
  return [...found]

  function dataLongestFirst(): readonly string[] {
    const { size } = inPage.sampleData
    if (inPage.sorted?.size === size) return inPage.sorted.data
    const data = [...inPage.sampleData].map(spaced).filter(hasWord)
    const sorted = data.toSorted((one, other) => other.length - one.length)
    inPage.sorted = { size, data: sorted }
    return sorted
  }

  /** What is in no brackets. What is broken into lines has one of its brackets in each. */
  function outsideOf(text: string): string {
    let [outside, depth] = ['', 0]
    for (const sign of text) {
      if (sign === '[') depth += 1
      else if (sign === ']') depth = Math.max(0, depth - 1)
      else if (depth === 0) outside += sign
    }
    return spaced(outside)
  }

  function hasWord(text: string): boolean {
    return text.split(/[^\p{L}]+/u).some((word) => word.length > 2 && /^[a-z]+$/i.test(word))
  }

  /** Without a text where it stands as words of their own; a single word only where no word is beside it. */
  function without(text: string, known: string): string {
    const [before, after] = known.includes(' ') ? ['', ''] : ['|\\p{L} ', '| \\p{L}']
    const escaped = known.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&')
    return text.replaceAll(
      new RegExp(`(?<![\\p{L}\\d]${before})${escaped}(?![\\p{L}\\d]${after})`, 'gu'),
      ' ',
    )
  }
}

/** Whether an entry of the gallery shows the help, whose texts are not in that language. */
export const isOfHelp = (entry: string): boolean => /help|glossary/.test(entry)
