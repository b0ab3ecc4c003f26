/** A request's body as text; null where it is longer than `most` bytes, and then no more of it is read. */
export async function bodyOf(request: Request, most: number): Promise<string | null> {
  const decoder = new TextDecoder();
  let [text, bytes] = ["", 0];
  const reader = request.body?.getReader();
  for (let part = await reader?.read(); part?.value; part = await reader?.read()) {
    bytes += part.value.length;
    if (bytes > most) {
      await reader?.cancel();
      return null;
    }
    text += decoder.decode(part.value, { stream: true });
  }
  return text + decoder.decode();
}
