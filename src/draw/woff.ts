import { inflateSync } from 'node:zlib';

const directoryAt = 44;
const packedEntry = 20;
const plainEntry = 16;

/**
 * A font file unpacked from WOFF 1.0 to the tables it holds, which are read many times over.
 * Layout after the W3C Recommendation "WOFF File Format 1.0" (2012), sections 3 to 5.
 * @throws Error for a file that is none
 */
export function unpackWoff(file: Buffer): Buffer {
  if (file.toString('latin1', 0, 4) !== 'wOFF') throw new Error('this is no WOFF file');
  const count = file.readUInt16BE(12);
  const tables = Array.from({ length: count }, (_, i) => {
    const at = directoryAt + i * packedEntry;
    const from = file.readUInt32BE(at + 4);
    const packed = file.subarray(from, from + file.readUInt32BE(at + 8));
    const length = file.readUInt32BE(at + 12);
    return {
      tag: file.subarray(at, at + 4),
      checksum: file.readUInt32BE(at + 16),
      data: packed.length < length ? inflateSync(packed) : packed,
    };
  });
  const head = Buffer.alloc(12 + count * plainEntry);
  file.copy(head, 0, 4, 8);
  const power = Math.floor(Math.log2(count));
  head.writeUInt16BE(count, 4);
  head.writeUInt16BE(2 ** power * plainEntry, 6);
  head.writeUInt16BE(power, 8);
  head.writeUInt16BE((count - 2 ** power) * plainEntry, 10);
  const pieces: Buffer[] = [head];
  let offset = head.length;
  tables.forEach(({ tag, checksum, data }, i) => {
    const at = 12 + i * plainEntry;
    tag.copy(head, at);
    head.writeUInt32BE(checksum, at + 4);
    head.writeUInt32BE(offset, at + 8);
    head.writeUInt32BE(data.length, at + 12);
    const padding = Buffer.alloc((4 - (data.length % 4)) % 4);
    pieces.push(data, padding);
    offset += data.length + padding.length;
  });
  return Buffer.concat(pieces);
}
