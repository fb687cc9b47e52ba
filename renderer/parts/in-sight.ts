import type { Attachment } from 'svelte/attachments'

/** A form that has just opened is scrolled to where all of it is seen, or its beginning where it is higher than its panel. */
export const inSight: Attachment<HTMLElement> = (form) => {
  const panel = form.closest('.panel')
  const isHigher = panel !== null && form.offsetHeight > panel.clientHeight
  form.scrollIntoView({ block: isHigher ? 'start' : 'nearest' })
}
