/** Entries that a trade's sheet prints at its foot: all but output rates, which only the programme's hours rest on. */
export function onPaper(rests: readonly string[]): string[] {
  return rests.filter((id) => !id.includes("-out-"))
}
