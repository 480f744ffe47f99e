/**
 * Entries that a trade's sheet prints at its foot: those behind its figures. Left out are output rates, which only the
 * programme's hours rest on, and of drying what bounds a rule rather than gives its hours.
 */
export function onPaper(rests: readonly string[]): string[] {
  return rests.filter((id) => !id.includes("-out-") && (!id.startsWith("drying-") || givesHours(id)))
}

function givesHours(id: string): boolean {
  return id === "drying-doubling" || /-(hours|per-mm)$/.test(id)
}
