"""Colours are legible, and told apart by eyes that see fewer."""

import itertools

import numpy as np
import pytest

from ultraplanner_gui.widgets.theme import DARK, LIGHT, Colours

THEMES = {"light": LIGHT, "dark": DARK}
GROUNDS = ("paper", "panel", "lane", "tile")
HUES = ("teal", "ochre", "sky", "plum", "clay", "moss", "indigo")
WASHES = (
    "pale_teal",
    "pale_ochre",
    "pale_sky",
    "pale_plum",
    "pale_clay",
    "pale_moss",
    "daylight",
    "stone",
    "twilight",
)
# Web Content Accessibility Guidelines 2.2, success criterion 1.4.3.
LEAST_CONTRAST = 4.5
# CIELAB distance; about 2.3 is just seen side by side (Mahy et al. 1994, Color Res Appl 19:105,
# from memory). Ten is our own choice for marks that lie apart.
LEAST_DISTANCE = 10.0
# Machado, Oliveira, Fernandes 2009, IEEE Trans Vis Comput Graph 15:1291, severity 1.0.
SIGHTS = {
    "usual": np.eye(3),
    "protanopia": np.array([
        [0.152286, 1.052583, -0.204868],
        [0.114503, 0.786281, 0.099216],
        [-0.003882, -0.048116, 1.051998],
    ]),
    "deuteranopia": np.array([
        [0.367322, 0.860646, -0.227968],
        [0.280085, 0.672501, 0.047413],
        [-0.011820, 0.042940, 0.968881],
    ]),
    "tritanopia": np.array([
        [1.255528, -0.076749, -0.178779],
        [-0.078411, 0.930809, 0.147602],
        [0.004733, 0.691367, 0.303900],
    ]),
}  # fmt: skip
# IEC 61966-2-1 (sRGB to XYZ, white D65).
TO_XYZ = np.array([
    [0.4124564, 0.3575761, 0.1804375],
    [0.2126729, 0.7151522, 0.0721750],
    [0.0193339, 0.1191920, 0.9503041],
])  # fmt: skip
WHITE = np.array([0.95047, 1.0, 1.08883])


def linear(colours: Colours, name: str) -> np.ndarray:
    code = getattr(colours, name)
    value = np.array([int(code[k : k + 2], 16) / 255 for k in (1, 3, 5)])
    return np.where(value <= 0.04045, value / 12.92, ((value + 0.055) / 1.055) ** 2.4)


def contrast(one: np.ndarray, other: np.ndarray) -> float:
    high, low = sorted((one @ TO_XYZ[1], other @ TO_XYZ[1]), reverse=True)
    return (high + 0.05) / (low + 0.05)


def lab(rgb: np.ndarray) -> np.ndarray:
    ratio = TO_XYZ @ np.clip(rgb, 0, 1) / WHITE
    f = np.where(ratio > 216 / 24389, np.cbrt(ratio), (24389 / 27 * ratio + 16) / 116)
    return np.array([116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])])


def test_black_on_white_has_the_contrast_of_the_standard():
    black_and_white = contrast(np.zeros(3), np.ones(3))
    assert black_and_white == pytest.approx(21.0, abs=0.01)


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("ink", ["ink", "soft", *[h for h in HUES if h != "indigo"]])
def test_text_is_legible_on_every_ground(theme, ground, ink):
    colours = THEMES[theme]
    assert contrast(linear(colours, ink), linear(colours, ground)) >= LEAST_CONTRAST


@pytest.mark.parametrize("theme", THEMES)
def test_ink_is_legible_on_every_wash_and_light_on_every_hue(theme):
    colours = THEMES[theme]
    for wash in WASHES:
        assert contrast(linear(colours, "ink"), linear(colours, wash)) >= LEAST_CONTRAST, wash
    for hue in ("teal", "plum", "clay"):
        assert contrast(linear(colours, "on_colour"), linear(colours, hue)) >= LEAST_CONTRAST, hue
    assert contrast(linear(colours, "on_night"), linear(colours, "night")) >= LEAST_CONTRAST


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("sight", SIGHTS)
def test_hues_stay_apart(theme, sight):
    seen = {hue: lab(SIGHTS[sight] @ linear(THEMES[theme], hue)) for hue in HUES}
    for one, other in itertools.combinations(HUES, 2):
        assert np.linalg.norm(seen[one] - seen[other]) >= LEAST_DISTANCE, (one, other)
