"""Where the files are that travel with the program: fonts, icons, the food table, the demo."""

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent.parent
# Inside the package in a wheel or a bundle, beside it in a checkout.
_ROOTS = (_PACKAGE / "resources", _PACKAGE.parent / "resources")


def path(name: str) -> Path:
    """Return the resource *name*, a path under `resources` such as "fonts/B612-Regular.otf".

    Raises FileNotFoundError if it does not travel with the program.
    """
    for root in _ROOTS:
        if (root / name).exists():
            return root / name
    raise FileNotFoundError(f"There is no resource {name!r} beside the program.")
