"""Runs first in a bundle on Linux: what Qt asks of a desktop is lent where a machine has none.

The libraries of OpenGL belong to the machine and its drivers, so ours are only taken where it has
none at all; then Qt starts, and paints without them. Without a locale text is UTF-8, as Python has
it by itself when it is not part of a bundle (PEP 538).

A bundle is its own Python: it is started again for the process that searches for a block
(`__main__` looks for that) and for the one that clears up after it. Only those two need what
PyInstaller's own hook imports at every start.
"""

import _ctypes
import os
import sys

NAMES = ("libGLdispatch.so.0", "libEGL.so.1", "libGLX.so.0", "libGL.so.1")
CLEARS_UP = "from multiprocessing.resource_tracker import main"

# The loader's own finder looks into its archive first, at every import. As everything lies in the
# folder (`noarchive` in the spec), Python's finder is all that is needed: a twentieth of the start.
importers = sys.modules["pyimod02_importers"]
if not importers.pyz_archive.toc:
    sys.path_hooks.remove(importers.PyiFrozenFinder.path_hook)
    sys.path_importer_cache.clear()

# Where the bundle lies, as its loader says.
lent = os.path.join(vars(sys)["_MEIPASS"], "lent")
for name in NAMES:
    try:
        _ctypes.dlopen(name, os.RTLD_GLOBAL)
    except OSError:
        _ctypes.dlopen(os.path.join(lent, name), os.RTLD_GLOBAL)

if not any(map(os.environ.get, ("LC_ALL", "LC_CTYPE", "LANG"))):
    os.environ["LC_CTYPE"] = "C.UTF-8"

if "-c" in sys.argv and sys.argv[-1].startswith(CLEARS_UP):
    exec(sys.argv[-1])
    sys.exit()
