#!/usr/bin/env bash
# Makes the pictures of cards.md, each card as chromium shows it, and ladder.png of commands.md. Needs chromium.
# The pictures named before-… are of the cards as they once were, and stay.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
swatchwright=${SWATCHWRIGHT:-cli-demo/swatchwright}

# paper NAME PAGES COMMAND…: a command's card as it is printed, its pages of A5 below each other
paper() {
  local name=$1 pages=$2
  shift 2
  $swatchwright "$@" --card "$work/$name.svg" >/dev/null
  screenshot "$name.svg" "559,$((pages * 794 - 2))" "card-$name"
}

# screenshot FILE SIZE PICTURE OPTION…
screenshot() {
  local file=$1 size=$2 picture=$3
  shift 3
  chromium --headless --no-sandbox --disable-gpu --disable-quic --no-first-run \
    --disable-background-networking --disable-component-update --disable-sync \
    --force-color-profile=srgb --hide-scrollbars --user-data-dir="$work/profile" \
    --window-size="$size" "$@" \
    --screenshot="cli-demo/docs/$picture.png" "file://$work/$file" 2>/dev/null
}

paper match 1 match '#8A4B2A'
$swatchwright match '#8A4B2A' --card "$work/match.html" >/dev/null
screenshot match.html 680,900 card-match-dark --force-dark-mode --blink-settings=preferredColorScheme=0
paper ladder 2 ladder '#C8642A' '#3B2A22' --rungs 4 --for rust --base 'Dredger grey'
paper coat 2 coat --base 'Dredger grey' \
  --coats 'Red oxide:2@1:1 over 40%, Whitewash wash:2, Blue filter:3' --area 200cm2
paper correct 1 correct 'Titanium white:6, Red oxide:2' --measured '#C3907F' --target '#B47A68'
paper sample 2 sample testdata/photos/hull-plate.jpg --region 35%,25%,30%,40% --colours 4 \
  --grey 510,56,76,76@18%
paper predict 1 predict 'Titanium white:6, Red oxide:1.5'
paper compare 1 compare '#8A4B2A' 'Red oxide'
paper plan 1 plan testdata/src/main/resources/io/github/swatchwright/testdata/demo/harbour-dredger.plan.json
paper shelf 1 shelf
paper calibrate 1 calibrate --pot 'Titanium white:6, Red oxide:2' --measured '#C3907F' \
  --out "$work/better.shelf.json" --next

# ladder.png: the looks of the two ladders of commands.md, side by side
$swatchwright ladder 'Bright orange:3, Yellow oxide:2, Red oxide:1' \
  'Burnt umber:4, Red oxide:1' --for rust --base 'Dredger grey' --picture "$work/rust.svg" >/dev/null
$swatchwright ladder 'Boot-topping red' \
  'Boot-topping red:1, Deckhouse cream:5, Dredger grey:2' --rungs 5 --for fading \
  --picture "$work/fade.svg" >/dev/null
{
  echo '<body style="margin:0;background:#fff;display:flex;gap:12px">'
  sed 's/width="160" height="80"/width="400" height="200"/' "$work/rust.svg" "$work/fade.svg"
} >"$work/looks.html"
screenshot looks.html 812,200 ladder
