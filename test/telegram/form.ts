import type { IncomingMessage } from 'node:http';

export interface FormFile {
  readonly field: string;
  readonly name: string;
  readonly type: string;
  readonly bytes: Buffer;
}

/** What a call carried: its fields, JSON read, and its files by field. */
export interface Form {
  readonly fields: Readonly<Record<string, unknown>>;
  readonly files: Readonly<Record<string, FormFile>>;
}

/** Reads a call's body as the platform does: JSON, or multipart with JSON in its fields. */
export async function readForm(request: IncomingMessage): Promise<Form> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  const body = Buffer.concat(chunks);
  const type = request.headers['content-type'] ?? '';
  const boundary = /^multipart\/form-data; *boundary="?([^";]+)/.exec(type)?.[1];
  if (boundary === undefined) {
    return {
      fields: body.length === 0 ? {} : (JSON.parse(body.toString('utf8')) as Form['fields']),
      files: {},
    };
  }
  const fields: Record<string, unknown> = {};
  const files: Record<string, FormFile> = {};
  // latin1 keeps every byte one character.
  for (const part of body.toString('latin1').split(`--${boundary}`).slice(1, -1)) {
    const [head, ...rest] = part.replace(/^\r\n/, '').split('\r\n\r\n');
    const bytes = Buffer.from(rest.join('\r\n\r\n').replace(/\r\n$/, ''), 'latin1');
    const headers = Buffer.from(head!, 'latin1').toString('utf8');
    const field = /name="([^"]*)"/.exec(headers)![1]!;
    const name = /filename="?([^"\r\n;]*)/.exec(headers)?.[1];
    if (name === undefined) fields[field] = value(bytes.toString('utf8'));
    else files[field] = { field, name, type: /content-type: *(\S+)/i.exec(headers)?.[1] ?? '', bytes };
  }
  // "attach://x" names the part that holds the file.
  for (const [field, said] of Object.entries(fields)) {
    const attached = typeof said === 'string' ? /^attach:\/\/(.+)$/.exec(said)?.[1] : undefined;
    if (attached !== undefined && files[attached]) files[field] = files[attached];
  }
  return { fields, files };
}

function value(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
