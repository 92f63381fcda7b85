#!/usr/bin/env bash
# Makes the pictures of cards.md, each card as chromium shows it, and ladder.png of commands.md. Needs chromium.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# picture NAME HEIGHT COMMAND…: the card of a command, 680 pixels wide
picture() {
  local name=$1 height=$2
  shift 2
  cli-demo/swatchwright "$@" --card "$work/$name.html" >/dev/null
  screenshot "$name" "$height" "$name"
}

# screenshot CARD HEIGHT PICTURE OPTION…
screenshot() {
  local card=$1 height=$2 picture=$3
  shift 3
  chromium --headless --no-sandbox --disable-gpu --disable-quic --no-first-run \
    --disable-background-networking --disable-component-update --disable-sync \
    --force-color-profile=srgb --hide-scrollbars --user-data-dir="$work/profile" \
    --window-size="680,$height" "$@" \
    --screenshot="cli-demo/docs/card-$picture.png" "file://$work/$card.html" 2>/dev/null
}

picture match 1130 match '#8A4B2A'
screenshot match 1130 match-dark --force-dark-mode --blink-settings=preferredColorScheme=0
picture predict 850 predict 'Titanium white:6, Red oxide:1.5'
picture correct 1330 correct 'Titanium white:6, Red oxide:2' --measured '#C3907F' --target '#B47A68'
picture sample 1000 sample testdata/photos/hull-plate.jpg --region 35%,25%,30%,40% --colours 4 \
  --grey 510,56,76,76@18%
picture ladder 2420 ladder '#C8642A' '#3B2A22' --rungs 4 --for rust --base 'Dredger grey'

# ladder.png: the looks of the two ladders of commands.md, side by side
cli-demo/swatchwright ladder 'Bright orange:3, Yellow oxide:2, Red oxide:1' \
  'Burnt umber:4, Red oxide:1' --for rust --base 'Dredger grey' --picture "$work/rust.svg" >/dev/null
cli-demo/swatchwright ladder 'Boot-topping red' \
  'Boot-topping red:1, Deckhouse cream:5, Dredger grey:2' --rungs 5 --for fading \
  --picture "$work/fade.svg" >/dev/null
{
  echo '<body style="margin:0;background:#fff;display:flex;gap:12px">'
  sed 's/width="160" height="80"/width="400" height="200"/' "$work/rust.svg" "$work/fade.svg"
} >"$work/looks.html"
screenshot looks 200 looks --window-size=812,200
mv cli-demo/docs/card-looks.png cli-demo/docs/ladder.png

picture coat 1550 coat --base 'Dredger grey' \
  --coats 'Red oxide:2@1:1 over 40%, Whitewash wash:2, Blue filter:3' --area 200cm2
picture compare 760 compare '#8A4B2A' 'Red oxide'
