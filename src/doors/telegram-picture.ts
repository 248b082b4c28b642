import type { Bot } from 'grammy';

/** The platform hands out no larger file. */
const mostBytes = 20_000_000;
const mostMs = 60_000;

/**
 * Fetches a picture that somebody sent.
 * @returns undefined where it is too large or gone
 */
export async function fetchPicture(
  { api }: Bot,
  { token, apiRoot }: { readonly token: string; readonly apiRoot: string | null },
  fileKey: string,
): Promise<Uint8Array | undefined> {
  const { file_path: path, file_size: bytes = 0 } = await api.getFile(fileKey);
  if (path === undefined || bytes > mostBytes) return undefined;
  const root = (apiRoot ?? 'https://api.telegram.org').replace(/\/+$/, '');
  const response = await fetch(`${root}/file/bot${token}/${path}`, { signal: AbortSignal.timeout(mostMs) });
  if (!response.ok) return undefined;
  const picture = new Uint8Array(await response.arrayBuffer());
  return picture.length > mostBytes ? undefined : picture;
}
