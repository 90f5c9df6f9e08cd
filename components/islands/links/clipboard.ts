/** Copies a text; false where the browser does not allow it. Many know no clipboard where the connection is not secure. */
export async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
