/** Text as a terminal may show it: control characters and those that turn the writing direction are left out, so that no note can steer the terminal. */
export const seen = (text: string): string => text.replace(/\t/g, ' ').replace(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, '');

const DENT = /^(\s*(?:[•…] )?)/;

/** Breaks lines at spaces to at most `width` characters; what goes over stands under the first word of its line. */
export function wrapped(text: string, width: number): string {
  if (!Number.isFinite(width)) return text;
  const most = Math.max(20, width - 1);
  return text.split('\n').map(line => {
    const lead = DENT.exec(line)![1]!;
    const under = ' '.repeat(lead.length);
    const out: string[] = [];
    let now = lead;
    for (const word of line.slice(lead.length).split(' ')) {
      const bare = now === lead || now === under;
      if (!bare && now.length + 1 + word.length > most) { out.push(now); now = under + word; } else now += (bare ? '' : ' ') + word;
    }
    return [...out, now].join('\n');
  }).join('\n');
}
