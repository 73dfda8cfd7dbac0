/** One part of a multipart/form-data body (RFC 7578), leniently: parameters may stand unquoted, as the chat library writes them. */
interface Part { name: string; filename?: string; bytes: Uint8Array }

export function partsOf(raw: Buffer, contentType: string): Part[] {
  const boundary = /boundary=(.+)$/.exec(contentType)![1]!;
  // Latin-1 keeps every byte as one sign.
  return raw.toString('latin1').split(`--${boundary}`).slice(1, -1).map(part => {
    const [head, body] = [part.slice(2, part.indexOf('\r\n\r\n')), part.slice(part.indexOf('\r\n\r\n') + 4, -2)];
    const value = (key: string) => new RegExp(`[; ]${key}="?([^";\r]+)`, 'i').exec(head)?.[1];
    return { name: value('name')!, filename: value('filename'), bytes: new Uint8Array(Buffer.from(body, 'latin1')) };
  });
}
