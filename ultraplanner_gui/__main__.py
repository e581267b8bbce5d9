"""Start Ultraplanner: python -m ultraplanner_gui, and the program of a bundle."""

import sys

if getattr(sys, "frozen", False):
    # A bundle is its own Python: it is started again for the process that searches for a block.
    from multiprocessing import freeze_support

    freeze_support()

from ultraplanner_gui.app import main

if __name__ == "__main__":
    raise SystemExit(main())
