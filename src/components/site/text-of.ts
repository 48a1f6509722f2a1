/**
 * The text of a file that a reader has chosen, or the sentence that says why there is none.
 *
 * @param longest characters that are read at most
 * @param what a file that is not larger would be: `no job is`
 */
export async function textOf(
  file: File,
  longest: number,
  what: string,
): Promise<{ readonly text: string } | { readonly say: string }> {
  // No character takes more than four bytes, so a larger file is too long without being read.
  if (file.size > 4 * longest)
    return {
      say: `This file is ${String(file.size)} bytes large; ${what}. None of it was used.`,
    };
  try {
    return { text: await file.text() };
  } catch {
    return { say: 'This file could not be read. None of it was used.' };
  }
}
