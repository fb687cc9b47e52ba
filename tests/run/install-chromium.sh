#!/usr/bin/env bash
# Installs what the end-to-end tests run in, where it is not there yet: Debian's headless Chromium, which takes half the
# processor time of the whole browser; else the whole browser, where there is none at all. Only root may.
set -euo pipefail
for browser in "${BEDPLATE_CHROMIUM:-}" chromium-headless-shell; do
  [ -n "$browser" ] && command -v "$browser" >/dev/null && exit 0
done
export DEBIAN_FRONTEND=noninteractive
install() { apt-get install -y -qq --no-install-recommends "$@"; }
apt-get update -qq && install chromium-headless-shell chromium-sandbox && exit 0
for browser in chromium google-chrome-stable google-chrome microsoft-edge; do
  command -v "$browser" >/dev/null && exit 0
done
install chromium chromium-sandbox
