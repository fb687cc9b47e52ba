import type { Client } from '../../../../core/contract/index.ts'
import type { BesideDraft } from '../../../../renderer/editor/draft/draft-at-work.ts'
import { picturesOf, type OtherWindowsOfDraft } from '../../../../renderer/editor/draft/draft-pictures.ts'

/** What lies beside a draft, as its page has it: on the host, with the sketch among the preferences. */
export function besideDraft(client: Client, draft: string, others?: OtherWindowsOfDraft): BesideDraft {
  let sketch: ReturnType<BesideDraft['sketch']> = null
  return {
    pictures: picturesOf(client, draft, others),
    sketch: () => sketch,
    async keepSketch(kept) {
      const answer = await client.request('preferences.keep', { sketch: kept && { draft, sketch: kept } })
      if (answer.ok) sketch = answer.value.sketch?.sketch ?? null
    },
  }
}
