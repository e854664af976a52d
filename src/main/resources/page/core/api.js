/** The service, asked as any other client would: bearer header, ETag, Idempotency-Key. */

/** An answer that is none: problem details (RFC 9457), or no answer at all (`code` "no-network"). */
export class Problem extends Error {
  constructor(status, body) {
    super(body.detail ?? "The service did not answer.");
    this.status = status;
    this.code = body.code ?? "no-network";
    this.title = body.title ?? "No connection";
    this.issues = body.issues ?? [];
  }
}

/** A key for one request that may be sent again: 128 random bits. */
export function freshKey() {
  const drawn = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(drawn, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/**
 * Sends one request.
 *
 * @param {object} how `token`, `body` (sent as JSON), `patch` (as a merge patch), `tag` (If-Match),
 *   `known` (If-None-Match), `key` (Idempotency-Key), `prefer`, `signal`, `accept`, `text` with
 *   `type` for bodies that are not JSON
 * @returns `{status, body, tag, location}`
 * @throws {Problem}
 */
export async function ask(method, path, how = {}) {
  const headers = { Accept: how.accept ?? "application/json, application/problem+json" };
  if (how.token) headers.Authorization = "Bearer " + how.token;
  if (how.tag) headers["If-Match"] = how.tag;
  if (how.known) headers["If-None-Match"] = how.known;
  if (how.key) headers["Idempotency-Key"] = how.key;
  if (how.prefer) headers.Prefer = how.prefer;
  let body;
  if (how.text !== undefined) {
    headers["Content-Type"] = how.type;
    body = how.text;
  } else if (how.patch !== undefined || how.body !== undefined) {
    headers["Content-Type"] =
      how.patch !== undefined ? "application/merge-patch+json" : "application/json";
    body = JSON.stringify(how.patch ?? how.body);
  }
  const answer = await sent(path, {
    method,
    headers,
    body,
    signal: how.signal,
    cache: "no-store",
    credentials: "omit",
  }, how.key ? 1 : 0);
  return {
    status: answer.status,
    body: await content(answer),
    tag: answer.headers.get("ETag") ?? "",
    location: answer.headers.get("Location") ?? "",
  };
}

/** What is done once however often it is sent may be sent again when the line broke. */
async function sent(path, request, again) {
  let answer;
  try {
    answer = await fetch(path, request);
  } catch (broken) {
    if (broken.name === "AbortError") throw broken;
    if (again > 0) return sent(path, request, again - 1);
    throw new Problem(0, {});
  }
  if (answer.ok || answer.status === 304) return answer;
  let body = {};
  try {
    body = await answer.json();
  } catch {
    // Something between here and the service answered.
  }
  throw new Problem(answer.status, { code: "no-answer", title: "No answer", ...body });
}

async function content(answer) {
  if (answer.status === 204 || answer.status === 304) return null;
  const kind = answer.headers.get("Content-Type") ?? "";
  const text = await answer.text();
  return kind.includes("json") && text ? JSON.parse(text) : text;
}

/**
 * Follows server-sent events until the service ends them. EventSource cannot send a header, and a
 * token does not belong into an address.
 *
 * @param {(kind: string, data: object) => void} told
 */
export async function followEvents(path, token, told, signal) {
  const answer = await sent(path, {
    headers: { Accept: "text/event-stream", Authorization: "Bearer " + token },
    signal,
    cache: "no-store",
    credentials: "omit",
  }, 0);
  const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
  let text = "";
  for (;;) {
    const { value, done } = await reader.read();
    if (done) return;
    text += value.replaceAll("\r\n", "\n");
    const events = text.split("\n\n");
    text = events.pop();
    events.forEach((event) => tellOne(event, told));
  }
}

function tellOne(event, told) {
  const field = (name) =>
    event
      .split("\n")
      .filter((line) => line.startsWith(name + ":"))
      .map((line) => line.slice(name.length + 1).trimStart())
      .join("\n");
  const data = field("data");
  if (data) told(field("event") || "message", JSON.parse(data));
}
