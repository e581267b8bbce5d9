"""Start Ultraplanner: python -m ultraplanner_gui."""

from ultraplanner_gui.app import main

if __name__ == "__main__":
    raise SystemExit(main())
