"""What is said beside every fuel plan. Plain words; the race's rules and doctors go first."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP

# On every printed fuel card.
STANDING = QT_TRANSLATE_NOOP(
    "Caution",
    "Amounts are a starting point to practise in training. Drink to thirst. Stop and get help if "
    "you are confused, faint, swollen, or keep vomiting. Race rules and medical staff go first.",
)

# Hew-Butler et al. 2015, Clin J Sport Med 25:303-320; Hoffman et al. 2013, Med Sci Sports
# Exerc 45:784-791.
OVER_DRINKING = QT_TRANSLATE_NOOP(
    "Caution",
    "Drinking more than you sweat can kill. Weight gain, puffy hands, headache or vomiting: "
    "no more plain water, go to medical staff at once.",
)
# Lipman et al. 2017, Emerg Med J 34:637-642.
PAINKILLERS = QT_TRANSLATE_NOOP(
    "Caution",
    "No ibuprofen or similar painkillers before or during the race: they may harm the kidneys. "
    "Pain that needs them is a reason to stop.",
)
# EFSA NDA Panel 2015, EFSA Journal 13(5):4102.
CAFFEINE = QT_TRANSLATE_NOOP(
    "Caution",
    "Caffeine limits are for healthy adults. Pregnant, under 18, with heart trouble, high blood "
    "pressure, anxiety or stimulant medicines: ask a doctor first.",
)
# Armstrong et al. 2007, Med Sci Sports Exerc 39:556-572; DeMartini et al. 2015, Med Sci Sports
# Exerc 47:240-245.
HEAT = QT_TRANSLATE_NOOP(
    "Caution",
    "Dizzy, confused, unsteady or shivering in the heat: stop, call for help and get into cold "
    "water first.",
)
# From memory; no single source.
MEDICINES = QT_TRANSLATE_NOOP(
    "Caution",
    "With diabetes, kidney, heart or blood pressure trouble, or on regular medicines, agree the "
    "plan with your doctor before you use it.",
)

# Regulation (EU) 1169/2011, Annex II; food-dependent anaphylaxis on exercise from memory.
ALLERGY = QT_TRANSLATE_NOOP(
    "Caution",
    "The table of foods cannot know every packet: read the label. Some foods set off an allergy "
    "only when one runs after them; carry what you were prescribed.",
)
# From memory; no single source.
FRUCTOSE = QT_TRANSLATE_NOOP(
    "Caution",
    "Many guts take fructose badly in large amounts. With hereditary fructose intolerance: no "
    "fructose, table sugar, honey or fruit at all.",
)

# What to do when it goes wrong, a line each. Common practice, no source, but for what is named.
# Doses: own rule, 15 to 30 g/h until it settles.
NAUSEA = QT_TRANSLATE_NOOP(
    "Caution",
    "Sick: slow down, cool down, small sips. Half an hour of nothing but mouthfuls, then 15 to 30 "
    "g/h of what you like, liquid or sweets. No fat, no big drinks.",
)
HOT = QT_TRANSLATE_NOOP(
    "Caution",
    "Hot: walk the climbs, wet head and arms at every stream, ice if there is any, eat less at a "
    "time. Confused or unsteady: stop, call help, cold water first.",
)
EMPTY = QT_TRANSLATE_NOOP(
    "Caution",
    "Empty: walk, take two sweets or half a gel and water now, again in ten minutes, then back to "
    "the plan. It passes in twenty to thirty minutes.",
)
# Hew-Butler et al. 2015, Clin J Sport Med 25:303-320.
LOW_SODIUM = QT_TRANSLATE_NOOP(
    "Caution",
    "Puffy hands, headache, gaining weight, clear urine: stop drinking. Something salty if awake. "
    "Confused or vomiting: medical staff at once, no water.",
)
FALLBACKS = (NAUSEA, HOT, EMPTY, LOW_SODIUM)

ALL = (OVER_DRINKING, PAINKILLERS, CAFFEINE, HEAT, MEDICINES)

# Before a first hard block. Basis: Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479 (from
# memory); own words, medical review advised.
BEFORE_BLOCK = QT_TRANSLATE_NOOP(
    "Caution",
    "Ask a doctor first with chest pain, fainting, unusual breathlessness or palpitations, with "
    "heart, kidney or metabolic disease, when pregnant, or after long inactivity.",
)

# When to stop, in the order of haste. Own words; medical review advised.
RED_FLAGS = (
    QT_TRANSLATE_NOOP(
        "Caution",
        "Stop now and call for help: chest pain, fainting, confusion, a fit, severe "
        "breathlessness, hot and confused, froth when coughing.",
    ),
    QT_TRANSLATE_NOOP(
        "Caution",
        "See a doctor the same day: dark urine, vomiting while gaining weight, puffy hands, "
        "headache after much drinking, black stool, a swollen calf.",
    ),
    QT_TRANSLATE_NOOP(
        "Caution",
        "Pain on one spot of bone, worse with load or at night, or in groin, hip or sacrum: no "
        "running until it has been seen.",
    ),
    QT_TRANSLATE_NOOP(
        "Caution",
        "No training with fever, chest symptoms or aches all over. No driving after a night "
        "without sleep.",
    ),
    OVER_DRINKING,
    PAINKILLERS,
    HEAT,
)
