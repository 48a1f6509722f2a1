/** Hands a text to the browser as a file to save. Nothing leaves the device. */
export function saveText(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Released late: some browsers start reading only after the click returns.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 10_000);
}
