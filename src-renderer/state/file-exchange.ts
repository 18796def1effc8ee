/** Hands a text to the reader as a file to keep. */
export function offerFile(fileName: string, text: string, type = 'application/json'): void {
  offerBlob(fileName, new Blob([text], { type }))
}

export function offerBlob(fileName: string, blob: Blob): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(blob)
  link.download = fileName
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}

/** Lets the reader choose files; none when they think better of it. */
export function chooseFiles(accept: string): Promise<readonly File[]> {
  return new Promise((resolve) => {
    const input = document.createElement('input')
    input.type = 'file'
    input.accept = accept
    input.multiple = true
    input.oncancel = () => resolve([])
    input.onchange = () => resolve([...(input.files ?? [])])
    input.click()
  })
}

/** The same, and returns their texts. */
export async function askForFiles(accept: string): Promise<{ name: string; text: string }[]> {
  return readFiles(await chooseFiles(accept))
}

export function readFiles(files: readonly File[]): Promise<{ name: string; text: string }[]> {
  return Promise.all(files.map(async (file) => ({ name: file.name, text: await file.text() })))
}
