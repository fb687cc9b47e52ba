type Env = Readonly<Record<string, string | undefined>>

/**
 * How a Node that downloads something gets through a proxy: `fetch` uses the variables only where `NODE_USE_ENV_PROXY` is
 * set (Node's documentation of its command line; 22.21 and 24.0), and who has set it for npm alone has set it for this program too: under
 * `npm start` npm's settings are in the surroundings.
 */
export function networkOf(env: Env): Readonly<Record<string, string>> {
  const npm = (name: string): string | undefined => env[`npm_config_${name}`] || undefined
  const https = env.HTTPS_PROXY || env.https_proxy || npm('https_proxy') || npm('proxy')
  const http = env.HTTP_PROXY || env.http_proxy || npm('proxy')
  const none = env.NO_PROXY || env.no_proxy || npm('noproxy')
  const authorities = env.NODE_EXTRA_CA_CERTS || npm('cafile')
  return {
    ...(https === undefined && http === undefined ? {} : { NODE_USE_ENV_PROXY: '1' }),
    ...(https === undefined ? {} : { HTTPS_PROXY: https }),
    ...(http === undefined ? {} : { HTTP_PROXY: http }),
    ...(none === undefined ? {} : { NO_PROXY: none }),
    ...(authorities === undefined ? {} : { NODE_EXTRA_CA_CERTS: authorities }),
  }
}
