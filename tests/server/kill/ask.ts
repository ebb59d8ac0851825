/** One answered request; a connection that broke is thrown. */
export const ask = async (address: string, method: string, path: string, body?: object | FormData) => {
  const form = body instanceof FormData;
  const reply = await fetch(address + path, {
    method,
    ...(body && { body: form ? body : JSON.stringify(body) }),
    ...(body && !form && { headers: { "content-type": "application/json" } }),
  });
  const bytes = new Uint8Array(await reply.arrayBuffer());
  const json = () => JSON.parse(new TextDecoder().decode(bytes));
  return { status: reply.status, bytes, json };
};
