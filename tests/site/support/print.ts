import { type Page } from 'playwright-core';
import { inflateSync } from 'node:zlib';

/** How many pages a PDF of Chromium has: its page objects, counted in the plain file and in packed streams. */
export function pagesOf(pdf: Buffer): number {
  const plain = pdf.toString('latin1');
  const packed = [...plain.matchAll(/stream\r?\n/g)].flatMap((start) => {
    const from = (start.index ?? 0) + start[0].length;
    const to = plain.indexOf('endstream', from);
    try {
      return [inflateSync(pdf.subarray(from, to)).toString('latin1')];
    } catch {
      // Not a packed stream.
      return [];
    }
  });
  return [plain, ...packed].reduce(
    (sum, text) => sum + (text.match(/\/Type\s*\/Page(?![A-Za-z])/g)?.length ?? 0),
    0,
  );
}

/** Prints the page as a browser would on its default margins. */
export function print(page: Page, format: 'A4' | 'Letter'): Promise<Buffer> {
  return page.pdf({
    format,
    preferCSSPageSize: false,
    margin: { top: '0.4in', bottom: '0.4in', left: '0.4in', right: '0.4in' },
  });
}
