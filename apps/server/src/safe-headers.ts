/** Everything comes from this server, nothing is framed, nothing is sent elsewhere. */
export const safeHeaders = {
  "content-security-policy": [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "img-src 'self' data: blob:",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join("; "),
  "x-content-type-options": "nosniff",
  "x-frame-options": "DENY",
  "referrer-policy": "no-referrer",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "permissions-policy": "camera=(), geolocation=(), microphone=()",
} as const;

/** Only this machine's own names are answered, so that no other site can point its name here and read the answers. */
export const isLocalHost = (host: string): boolean => /^(127\.0\.0\.1|localhost|\[::1\])(:\d+)?$/i.test(host);
