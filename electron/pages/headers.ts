/** Nothing but what the program ships runs or loads: no inline script or style, no other place, no frame around it. */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

/** On every response of both hosts, whatever it is. */
export const guardHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': contentPolicy,
  'x-frame-options': 'DENY',
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'permissions-policy':
    'camera=(self), microphone=(), geolocation=(), usb=(), serial=(self), hid=(), midi=()',
}
