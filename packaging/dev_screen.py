"""A virtual X server with a window manager, for tests and trials of whole windows."""

from __future__ import annotations

import contextlib
import os
import subprocess
import time
from collections.abc import Iterator, Sequence

from dev_setup import BUILD, Refusal, environment


def _background(
    command: Sequence[str], env: dict[str, str], *handles: int
) -> subprocess.Popen[bytes]:
    return subprocess.Popen(
        command,
        env=env,
        pass_fds=handles,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        start_new_session=True,
    )


@contextlib.contextmanager
def virtual_screen() -> Iterator[dict[str, str]]:
    """Run an X server and a window manager of our own; give the environment to use them."""
    started: list[subprocess.Popen[bytes]] = []
    reader, writer = os.pipe()
    try:
        server = ["Xvfb", "-displayfd", str(writer), "-screen", "0", "1600x1200x24"]
        server += ["-nolisten", "tcp", "-noreset"]
        started.append(_background(server, environment(), writer))
        os.close(writer)
        with os.fdopen(reader) as answer:
            number = answer.readline().strip()
        if not number:
            raise Refusal("Xvfb did not start.")
        # A config folder of its own keeps the user's key bindings out of the tests.
        env = {"DISPLAY": f":{number}", "QT_QPA_PLATFORM": "xcb"}
        desk = {**environment(), **env, "XDG_CONFIG_HOME": str(BUILD / "no-config")}
        started.append(_background(["openbox", "--sm-disable"], desk))
        _wait_for_window_manager(desk)
        yield env
    except FileNotFoundError as error:
        raise Refusal(f"The tests of whole windows need {error.filename}; install it.") from error
    finally:
        for process in reversed(started):
            process.terminate()
            process.wait()


def _wait_for_window_manager(env: dict[str, str]) -> None:
    # Asking for desktops succeeds as soon as a manager has announced itself.
    ask = ["xdotool", "get_num_desktops"]
    for _ in range(100):
        if subprocess.run(ask, env=env, capture_output=True, check=False).returncode == 0:
            return
        time.sleep(0.1)
    raise Refusal("The window manager of the tests did not start.")
