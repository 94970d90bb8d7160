// Fetches a data file, unpacks it, and refuses it unless what is in it has the digest that was
// computed at the build. A wrong one may lie in a cache on the way: it is fetched once more past
// all of them before anybody is told.
import { read } from '../edition/files.ts';
import { base64, sha256 } from './digest.ts';

/** Why lines cannot be shown; code is a key of the string catalogue below "error.". */
export class TextError extends Error {
  constructor(
    readonly code: 'network' | 'damaged' | 'foreign' | 'old-browser' | 'version',
    detail: string,
  ) {
    super(detail);
  }
}

async function once(url: string, cache: RequestCache): Promise<Uint8Array<ArrayBuffer>> {
  try {
    return await read(url, cache);
  } catch (e) {
    throw new TextError('network', `${url}: ${String(e)}`);
  }
}

async function unpack(b: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  // Some hosts declare .gz as a content encoding and the browser has unpacked it already.
  if (b[0] !== 0x1f || b[1] !== 0x8b) return b;
  if (typeof DecompressionStream === 'undefined')
    throw new TextError('old-browser', 'DecompressionStream');
  return new Uint8Array(
    await new Response(
      new Blob([b]).stream().pipeThrough(new DecompressionStream('gzip')),
    ).arrayBuffer(),
  );
}

async function right(
  url: string,
  digest: string,
  cache: RequestCache,
): Promise<Uint8Array<ArrayBuffer>> {
  const packed = await once(url, cache);
  const raw = await unpack(packed).catch((e: unknown) => {
    if (e instanceof TextError) throw e;
    return undefined;
  });
  if (raw && (await digestOf(raw)) === digest) return raw;
  // A page in place of a file, such as the sign-in of a public network.
  throw new TextError(packed[0] === 0x3c ? 'foreign' : 'damaged', url);
}

/** SHA-256 in base64; where that takes a part of the script that does not come, a TextError. */
const digestOf = (raw: Uint8Array<ArrayBuffer>): Promise<string> =>
  sha256(raw).then(base64, (e: unknown) => {
    throw new TextError('network', String(e));
  });

/** What is in the file at url, with digest (SHA-256 in base64) checked; else a TextError. */
export async function verified(url: string, digest: string): Promise<Uint8Array<ArrayBuffer>> {
  try {
    return await right(url, digest, 'default');
  } catch (e) {
    if ((e as TextError).code === 'old-browser') throw e;
    return right(url, digest, 'reload');
  }
}
