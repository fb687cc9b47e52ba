/** Contrast of two colours written as `#RRGGBB`, from 1 to 21 (WCAG 2.2, relative luminance of sRGB). */
export function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number]
  return (light + 0.05) / (dark + 0.05)
}

function luminance(colour: string): number {
  const channel = (at: number): number => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  }
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5)
}

/** Whichever of two colours stands out more on the ground. */
export function clearerColour(ground: string, one: string, other: string): string {
  return contrast(ground, one) >= contrast(ground, other) ? one : other
}
