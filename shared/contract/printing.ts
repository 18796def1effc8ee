import * as v from 'valibot'
import { call, nothing } from './call'

/*
 * The sheet that the window shows, on paper or as a PDF. Only the desktop window can do this itself; elsewhere the
 * answer is that it cannot be had, and the page prints through its browser.
 */

export const printing = {
  'print:paper': call(nothing, nothing),
  /** Asks where to save it; `saved` is false where the reader thought better of it. */
  'print:pdf': call(
    v.strictObject({ fileName: v.pipe(v.string(), v.minLength(1), v.maxLength(160)) }),
    v.strictObject({ saved: v.boolean() }),
  ),
}
