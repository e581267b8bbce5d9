"""What the ground underfoot costs."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

# Energy on this ground over energy on firm ground at the same speed. Dry sand 1.6 is published
# (Lejeune, Willems & Heglund 1998, J Exp Biol 201:2071-2080), smooth trail lies at the 1.05 of an
# uneven treadmill (Voloshina & Ferris 2015, J Exp Biol 218:711-719); the others are OWN defaults.
COST_FACTOR: Mapping[str, float] = MappingProxyType(
    {
        "unknown": 1.00,
        "road": 1.00,
        "gravel": 1.02,
        "smooth trail": 1.05,
        "grass": 1.08,
        "technical trail": 1.15,
        "rock": 1.40,
        "sand": 1.60,
        "snow": 1.45,
    }
)

# Speed downhill on this ground over that on firm ground, besides what the ground costs. OWN
# defaults; that descents separate runners most: Bjorklund et al. 2019, Front Physiol 10:506.
DESCENT_FACTOR: Mapping[str, float] = MappingProxyType(
    {
        "unknown": 1.00,
        "road": 1.00,
        "gravel": 0.98,
        "smooth trail": 0.95,
        "grass": 0.95,
        "technical trail": 0.80,
        "rock": 0.55,
        "sand": 0.80,
        "snow": 0.80,
    }
)
