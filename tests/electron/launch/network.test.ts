import { describe, expect, it } from 'vitest'
import { networkOf } from '../../../electron/launch/network.ts'

describe('the way to the network', () => {
  it('is left as it is without a proxy', () => {
    expect(networkOf({ PATH: '/usr/bin' })).toEqual({})
  })

  it('is the proxy of the surroundings, which Node must be told to use', () => {
    expect(networkOf({ https_proxy: 'http://shop:3128', no_proxy: 'localhost' })).toEqual({
      NODE_USE_ENV_PROXY: '1',
      HTTPS_PROXY: 'http://shop:3128',
      NO_PROXY: 'localhost',
    })
  })

  it('is the proxy and the certificates that npm has in its settings, where there are none in the surroundings', () => {
    const npm = {
      npm_config_proxy: 'http://shop:3128',
      npm_config_cafile: '/etc/shop.pem',
      npm_config_noproxy: '',
    }
    expect(networkOf(npm)).toEqual({
      NODE_USE_ENV_PROXY: '1',
      HTTPS_PROXY: 'http://shop:3128',
      HTTP_PROXY: 'http://shop:3128',
      NODE_EXTRA_CA_CERTS: '/etc/shop.pem',
    })
    expect(networkOf({ ...npm, HTTPS_PROXY: 'http://other:1' })).toMatchObject({
      HTTPS_PROXY: 'http://other:1',
    })
  })
})
