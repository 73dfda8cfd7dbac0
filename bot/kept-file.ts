import type { Media } from '../domain/store/media.ts';

/** The type under which a kept file is handed to a browser: that of its bytes, and never one that could run as a page. */
export const byteType = (media: Pick<Media, 'mime'>): string => (/^(image|audio|video)\//.test(media.mime) ? media.mime : 'application/octet-stream');
