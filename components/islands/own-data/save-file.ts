/** Hands a text to the browser as a file to be saved; where it goes is the browser's and the player's to say. */
export function saveFile(name: string, text: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  Object.assign(document.createElement('a'), { href: address, download: name }).click();
  // The download has its own hold on the file once it has begun.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
