"""Topics of the program and no plan: its settings, its handbook."""

from __future__ import annotations

from ultraplanner_gui.plan.message import QT_TRANSLATE_NOOP
from ultraplanner_gui.wording.help.topic import Topic

TOPICS: tuple[Topic, ...] = (
    Topic(
        "settings",
        QT_TRANSLATE_NOOP("Help", "Settings"),
        QT_TRANSLATE_NOOP(
            "Help",
            "What holds for the program and not for one plan: language, units, colours, size of "
            "text, paper. A change is seen at once, a language from the next start on. Export "
            "takes your choices to another computer; nothing of a plan or of your health is in "
            "that file.",
        ),
        see=("sheet", "cards", "help"),
        words=QT_TRANSLATE_NOOP("Help", "preferences options language locale theme export import"),
    ),
    Topic(
        "handbook",
        QT_TRANSLATE_NOOP("Help", "Handbook"),
        QT_TRANSLATE_NOOP(
            "Help",
            "The job in ten steps with pictures, and every topic of this help in order: what each "
            "figure means, where it comes from, on which source. It says what is custom and what "
            "is supported, and ends with all cautions. Search it by any word; write it as a PDF "
            "to print.",
        ),
        see=("help", "settings", "red flags", "copy to send", "several plans", "finder"),
        words=QT_TRANSLATE_NOOP("Help", "manual guide documentation pdf steps"),
    ),
    Topic(
        "copy to send",
        QT_TRANSLATE_NOOP("Help", "Copy to send"),
        QT_TRANSLATE_NOOP(
            "Help",
            "A file of the plan as it stands, without earlier states, to give to a coach or crew. "
            "Who you are, health, recordings and notes stay out unless you untick them. It may "
            "still tell where and when you race.",
        ),
        see=("kept", "recordings", "handbook"),
        words=QT_TRANSLATE_NOOP("Help", "mail send share privacy coach"),
    ),
    Topic(
        "several plans",
        QT_TRANSLATE_NOOP("Help", "Several plans"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Each race of each runner is a file of its own. File, Another window shows a second "
            "one beside the first; a build-up goes from one to the other as a template. Without a "
            "window, ultraplanner-gui --cards OUT FOLDER writes the cards of each file in a "
            "folder, --dump FILE prints all there is in one as lines of JSON, and --restore LINES "
            "FILE makes an equal file of them.",
        ),
        see=("template block", "copy to send", "hand over"),
        words=QT_TRANSLATE_NOOP(
            "Help", "coach runners side by side compare window batch folder command line json"
        ),
    ),
    Topic(
        "finder",
        QT_TRANSLATE_NOOP("Help", "Find anything"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Type words in any order: sessions, stations, sections, foods, checks, help and "
            "everything in the menus are listed. Enter goes there or does it. Figures in the list "
            "are those of the plan; ask about them where they stand.",
        ),
        see=("help", "filter"),
        words=QT_TRANSLATE_NOOP("Help", "search look for go to command"),
    ),
    Topic(
        "filter",
        QT_TRANSLATE_NOOP("Help", "Filter rows"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Only rows that hold all these words in any of their cells stay in sight; the count "
            "says how many of how many. Nothing is removed. Esc shows all rows again.",
        ),
        see=("tables", "finder"),
        words=QT_TRANSLATE_NOOP("Help", "search narrow hide rows"),
    ),
    Topic(
        "typing in a table",
        QT_TRANSLATE_NOOP("Help", "Typing in a table"),
        QT_TRANSLATE_NOOP(
            "Help",
            "Type over a cell or double-click it; Enter keeps it and goes down. A time is 1 h 30, "
            "1:30 or 90 min, a clock time 09:30, with its day (Sat 09:30) where there are several. "
            "What cannot be read is said under the table, and nothing is changed. Cells in pale "
            "ink follow from others.",
        ),
        see=("tables", "filter"),
        words=QT_TRANSLATE_NOOP("Help", "edit cell enter paste format"),
    ),
)
