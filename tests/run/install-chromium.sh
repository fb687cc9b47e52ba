#!/usr/bin/env bash
# Installs Debian's Chromium where no browser is there that the end-to-end tests could run in. Only root may.
set -euo pipefail
for browser in "${BEDPLATE_CHROMIUM:-}" chromium google-chrome-stable google-chrome microsoft-edge; do
  [ -n "$browser" ] && command -v "$browser" >/dev/null && exit 0
done
export DEBIAN_FRONTEND=noninteractive
apt-get update -qq
apt-get install -y -qq --no-install-recommends chromium chromium-sandbox
