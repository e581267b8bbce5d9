"""Values: what is never changed in place, equal where its fields are.

They are msgspec structs. Made in C, one takes a tenth of the time of a frozen dataclass, a changed
copy (`msgspec.structs.replace`) a twentieth, and the class itself a thirtieth: the program has
hundreds of them, which was a tenth of its start.
"""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta, Struct

#: No figure of a plan is larger, so that sums and squares of many stay far from the ends of a
#: double.
LARGEST_NUMBER = 10**12

_WITHIN = Meta(ge=-LARGEST_NUMBER, le=LARGEST_NUMBER)
Number = Annotated[float, _WITHIN]
"""A figure in what is `Kept`."""
Whole = Annotated[int, _WITHIN]
"""A whole number in what is `Kept`."""


class Value(Struct, frozen=True):
    """A value of named fields."""


class Kept(Value, frozen=True, gc=False):
    """A part of a plan: what a project file holds, made by msgspec as it reads.

    None leads back to itself, so Python need not look for garbage among them.
    """
