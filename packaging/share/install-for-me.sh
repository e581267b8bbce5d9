#!/bin/sh
# Puts Ultraplanner into the menu of this user, and lets a double click open its files. Run it in
# the folder of the bundle, again after moving it; with --remove it takes everything away again.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
data=${XDG_DATA_HOME:-$HOME/.local/share}
name=org.ultraplanner.Ultraplanner.desktop
entry=$data/applications/$name
cd "$here/share"
icons=$(find icons -type f)
if [ "${1:-}" = --remove ]; then
    rm -f "$entry" "$data/mime/packages/ultraplanner-mime.xml"
    echo "$icons" | while read -r icon; do rm -f "$data/$icon"; done
else
    mkdir -p "$data/applications" "$data/mime/packages"
    # A path in Exec stands in quotes, with these signs escaped twice over and % doubled.
    quoted=$(printf %s "$here/ultraplanner" | sed 's/[\\`$"]/\\\\&/g; s/%/%%/g; s/[\\&|]/\\&/g')
    sed "s|^Exec=ultraplanner-gui|Exec=\"$quoted\"|" "applications/$name" > "$entry"
    cp mime/packages/ultraplanner-mime.xml "$data/mime/packages/"
    echo "$icons" | while read -r icon; do
        mkdir -p "$data/$(dirname "$icon")"
        cp "$icon" "$data/$icon"
    done
fi
# Desktops find out by themselves sooner or later; these make it at once.
for tool in "update-desktop-database $data/applications" "update-mime-database $data/mime"; do
    command -v "${tool%% *}" > /dev/null && eval "${tool%% *} \"${tool#* }\"" || true
done
