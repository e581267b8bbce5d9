"""Start Ultraplanner: python -m ultraplanner_gui, and the program of a bundle."""

import sys

if getattr(sys, "frozen", False) and (
    sys.platform != "linux" or sys.argv[1:2] == ["--multiprocessing-fork"]
):
    # A bundle is its own Python: it is started again for the process that searches for a block.
    # On Linux nothing else is looked for here (see packaging/bundle_start.py).
    from multiprocessing.spawn import freeze_support

    freeze_support()

from ultraplanner_gui.app import main

if __name__ == "__main__":
    raise SystemExit(main())
