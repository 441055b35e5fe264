#!/bin/sh
# Opens the page in the browser: for a double click. Closing the window, if there is one, ends it.
exec "$(dirname "$0")/bin/fingering" open --demo "$@"
