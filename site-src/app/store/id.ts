/** A name nothing else has, of 20 characters; also where crypto.randomUUID is absent. */
export const newId = () =>
  Array.from(crypto.getRandomValues(new Uint8Array(10)), (b) =>
    b.toString(16).padStart(2, '0'),
  ).join('');
