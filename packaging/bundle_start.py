"""Runs first in a bundle on Linux: what Qt asks of a desktop is lent where a machine has none.

The libraries of OpenGL belong to the machine and its drivers, so ours are only taken where it has
none at all; then Qt starts, and paints without them.
"""

import ctypes
import os
import sys

NAMES = ("libGLdispatch.so.0", "libEGL.so.1", "libGLX.so.0", "libGL.so.1")

# Where the bundle lies, as its loader says.
lent = os.path.join(vars(sys)["_MEIPASS"], "lent")
for name in NAMES:
    try:
        ctypes.CDLL(name, ctypes.RTLD_GLOBAL)
    except OSError:
        ctypes.CDLL(os.path.join(lent, name), ctypes.RTLD_GLOBAL)
