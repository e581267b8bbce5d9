"""The frame: menus, the open project, and the empty start."""

from __future__ import annotations

from functools import cached_property, partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QEvent, Qt, QTimer, Slot
from PySide6.QtGui import (
    QAction,
    QCloseEvent,
    QCursor,
    QDragEnterEvent,
    QDropEvent,
    QGuiApplication,
    QKeyEvent,
    QKeySequence,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QLabel,
    QMainWindow,
    QMenu,
    QProgressBar,
    QPushButton,
    QSizePolicy,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

# Only what the first sight of the window needs; `furnish` imports the rest.
from ultraplanner_gui.desk.settings import Settings
from ultraplanner_gui.plan.message import Message
from ultraplanner_gui.widgets.theme import dress, theme
from ultraplanner_gui.widgets.tokens import Pt, Space
from ultraplanner_gui.window.action_table import MENUS

if TYPE_CHECKING:
    from ultraplanner_gui.desk.document import Document
    from ultraplanner_gui.plan.project import Project
    from ultraplanner_gui.window.ask import Ask
    from ultraplanner_gui.window.beside import Beside
    from ultraplanner_gui.window.finder import Finder
    from ultraplanner_gui.window.first_sight import FirstSight
    from ultraplanner_gui.window.workplace import Workplace

MESSAGE_MS = 12_000
#: What a line at the foot keeps free above and below what stands in it.
FOOT_EDGES_PX = 5
#: What is asked of the system then is in nobody's way any more.
STILLNESS_MS = 400


class MainWindow(QMainWindow):
    """One window, one project or none."""

    def __init__(
        self, settings: Settings, ask: Ask | None = None, *, sight: FirstSight | None = None
    ) -> None:
        """Make the window whole, or with *sight* in it until `furnish` is called."""
        super().__init__()
        self.settings = settings
        self.workplace: Workplace | None = None
        self._ask = ask
        self._held: list[QKeyEvent] = []
        self.is_furnished = False
        self.setObjectName("main")
        self.setMinimumSize(960, 600)
        self._lay_out_foot()
        self.hide_progress()
        self.setWindowTitle("Ultraplanner")
        if not (settings.window_geometry and self.restoreGeometry(settings.window_geometry)):
            self.resize(1440, 900)
        if sight is None:
            self.furnish()
        else:
            for _, text in MENUS:
                self.menuBar().addMenu(QCoreApplication.translate("Actions", text))
            self.setCentralWidget(sight)
            if sight.race_name:
                self.setWindowTitle(f"{sight.race_name} – Ultraplanner")

    def furnish(self) -> None:
        """Put in everything the window is made of; again does nothing."""
        if self.is_furnished:
            return
        from ultraplanner_gui.desk.jobs import JobBench
        from ultraplanner_gui.window.actions import Actions
        from ultraplanner_gui.window.ask import Ask
        from ultraplanner_gui.window.deeds import Deeds
        from ultraplanner_gui.window.help_giver import HelpGiver
        from ultraplanner_gui.window.sitting import Sitting

        self.is_furnished = True
        self.ask = self._ask or Ask(self)
        self.jobs = JobBench(self)
        self.deeds = Deeds(self)
        self.sitting = Sitting(self)
        self.setAcceptDrops(True)
        self.table = Actions(self, self.deeds)
        self.help = HelpGiver(self)
        self._fill_menus()
        self._cancel.clicked.connect(self.deeds.cancel_job)
        self._lay_out_middle()
        self._refresh_welcome()
        self._enable()
        self._title()
        self._listen_for_stillness()

    def _listen_for_stillness(self) -> None:
        """Hear from the system whether things shall keep still, a while after the first sight."""
        from ultraplanner_gui.desk.stillness import Stillness
        from ultraplanner_gui.widgets.motion import Motion

        self._stillness = Stillness(self)
        self._stillness.told.connect(Motion.still)
        QTimer.singleShot(STILLNESS_MS, self._stillness.ask)

    def hand_on_keys(self) -> None:
        """Let the keys act that were pressed before there was anything for them to act on."""
        if self.workplace is not None and self.focusWidget() is None:
            # Made active while it was empty, the window had nobody to give the keyboard to.
            self._middle.show()  # else with the next event, and what is hidden takes none
            self.workplace.buildup.grid.setFocus(Qt.FocusReason.OtherFocusReason)
        held, self._held = self._held, []
        by_keys = {keys: a for a in self.actions() for keys in a.shortcuts() if a.isEnabled()}
        for event in held:
            action = by_keys.get(QKeySequence(event.keyCombination()))
            if action is not None:
                action.trigger()
            else:
                QCoreApplication.postEvent(self.focusWidget() or self, event)

    def _fill_menus(self) -> None:
        self.menuBar().clear()
        self._menus = self.table.fill(self.menuBar())
        self._recent = QMenu(self.tr("Open &recent"), self)
        self._recent.aboutToShow.connect(self._fill_recent)
        self._menus["file"].insertMenu(self.table.by_name["demo"], self._recent)
        self._lanes = (
            QMenu(self.tr("Lanes of the bu&ild-up"), self),
            QMenu(self.tr("Lanes of race da&y"), self),
        )
        for menu in self._lanes:
            menu.aboutToShow.connect(self._fill_lanes)
            self._menus["view"].insertMenu(self.table.by_name["by_distance"], menu)
        self._undo: list[QAction] = []

    def _lay_out_middle(self) -> None:
        from ultraplanner_gui.widgets.help_topic import set_topic
        from ultraplanner_gui.window.offer import OfferBar
        from ultraplanner_gui.window.welcome import Welcome

        deeds = self.deeds
        self._welcome = Welcome(
            deeds.new, deeds.type_course, deeds.open, deeds.demo, deeds.open_project_file, self
        )
        set_topic(self._welcome, "welcome")
        self._stack = QStackedWidget(self)
        self._stack.addWidget(self._welcome)
        self.offer = OfferBar(self)
        holder = QWidget(self)
        box = QVBoxLayout(holder)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(0)
        box.addWidget(self._stack, 1)
        # In the line at the foot, which is there anyway: nothing moves when something is offered.
        self.statusBar().insertWidget(0, self.offer, 3)
        theme().changed.connect(self._fit_foot)
        self._fit_foot()
        self.setCentralWidget(holder)
        self._middle = holder

    def _lay_out_foot(self) -> None:
        self._message = QLabel("", self)
        self._message.setTextFormat(Qt.TextFormat.PlainText)
        #: What the plan was when the message was said: the next edit takes it away.
        self._said_of: Project | None = None
        self.statusBar().setSizeGripEnabled(False)
        self.statusBar().setContentsMargins(Space.WIDE, 0, Space.WIDE, 0)
        # However long the sentence is, the window need not be as wide; its tip is the whole.
        self._message.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.statusBar().addWidget(self._message, 1)
        self._message.hide()
        self._work = QLabel("", self)
        self._work.setTextFormat(Qt.TextFormat.PlainText)
        self._progress = QProgressBar(self)
        self._progress.setRange(0, 1000)
        self._progress.setFixedWidth(180)
        self._cancel = QPushButton(self.tr("Cancel"), self)
        self.statusBar().addPermanentWidget(self._work)
        self.statusBar().addPermanentWidget(self._progress)
        self.statusBar().addPermanentWidget(self._cancel)
        self._quiet = QTimer(self)
        self._quiet.setSingleShot(True)
        self._quiet.timeout.connect(self._hush)

    @Slot()
    def _fit_foot(self) -> None:
        """Keep the line at the foot as high as what may come to stand in it."""
        self.offer.least_px = self._cancel.sizeHint().height()
        # Setting the same height again would lay the window out anew.
        if self.statusBar().minimumHeight() != self.offer.least_px + FOOT_EDGES_PX:
            self.statusBar().setMinimumHeight(self.offer.least_px + FOOT_EDGES_PX)

    @cached_property
    def finder(self) -> Finder:
        """What finds anything by its name, made when it is first asked for."""
        from ultraplanner_gui.window.finder import Finder
        from ultraplanner_gui.window.finder_sources import FinderSources

        return Finder(self, FinderSources(self).all())

    @property
    def document(self) -> Document | None:
        """The open project's document."""
        return self.workplace.document if self.workplace is not None else None

    def show_document(self, document: Document) -> None:
        """Show *document* instead of what was open."""
        self.close_document()
        self._set_up(document)

    def close_document(self) -> None:
        """Close the open project; everything in it is kept already."""
        document = self.document
        if document is not None:
            self.offer.withdraw()
            self._take_down()
            document.close()
            self.sitting.ended()
            self._refresh_welcome()

    def reopen_views(self) -> None:
        """Build the views of the open project anew, after a change of units or language."""
        if self.workplace is not None:
            document, place = self.workplace.document, self.workplace.place
            kind, key = self.workplace.selection.kind, self.workplace.selection.key
            folded = self.workplace.raceday.folds.keys
            document.setParent(None)
            self._take_down()
            self._set_up(document)
            self.go(place)
            self.workplace.raceday.folds.choose(folded)
            if kind:
                self.workplace.selection.choose(kind, key)

    def go(self, place: str) -> None:
        """Show the sheet, the tables or the cards."""
        from ultraplanner_gui.window.workplace import PLACES

        if self.workplace is not None:
            self.workplace.show_place(place)
        for name in PLACES:
            self.table.by_name[name].setChecked(name == place)
        self.sitting.moved()
        self._enable()

    def explain(self, key: str, near: QWidget) -> None:
        """Have the help topic *key* explained for *near*, which was asked about."""
        self.help.explain(key, near)

    @Slot(object)
    def say(self, message: Message | str) -> None:
        """Show one sentence at the foot of the window."""
        text = message if isinstance(message, str) else self.settings.words().say(message)
        self.inform(text)
        dress(self._message, Pt.TEXT, theme().colours.clay)

    @Slot(object)
    def _refuse(self, message: Message) -> None:
        """Say why something cannot be done, beside the pointer too while that drags."""
        self.say(message)
        if QGuiApplication.mouseButtons() != Qt.MouseButton.NoButton:
            self._beside.say(self._message.text(), QCursor.pos())

    @cached_property
    def _beside(self) -> Beside:
        from ultraplanner_gui.window.beside import Beside

        return Beside(self)

    def inform(self, text: str) -> None:
        """Show *text* at the foot of the window in plain ink: nothing is wrong."""
        dress(self._message, Pt.TEXT, theme().colours.ink)
        self._said_of = None if self.document is None else self.document.project
        self._message.setText(text)
        self._message.setToolTip(text)
        self._message.show()
        self._quiet.start(MESSAGE_MS)

    @Slot()
    def _hush(self) -> None:
        """Say nothing any more."""
        self._message.clear()
        self._message.hide()

    def name_work(self, what: str) -> None:
        """Say beside the progress *what* is being done."""
        self._work.setText(what)
        self._progress.setAccessibleName(what)

    def show_progress(self, fraction: float) -> None:
        """Show how far the running job is, with its Cancel."""
        self._work.setVisible(True)
        self._progress.setVisible(True)
        self._cancel.setVisible(True)
        self._progress.setValue(round(1000 * fraction))

    def hide_progress(self) -> None:
        """Take the progress away."""
        self._work.setVisible(False)
        self._progress.setVisible(False)
        self._cancel.setVisible(False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self.is_furnished:
            super().keyPressEvent(event)
        else:
            self._held.append(event.clone())

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        files = [Path(u.toLocalFile()) for u in event.mimeData().urls() if u.isLocalFile()]
        if files:
            event.acceptProposedAction()
            self.deeds.take_dropped(tuple(files))

    def changeEvent(self, event: QEvent) -> None:
        if (
            event.type() is QEvent.Type.ActivationChange
            and self.isActiveWindow()
            and self.document is not None
        ):
            self.document.refresh_today()
            self._stillness.ask()
        super().changeEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.workplace is not None and event.oldSize().height() != event.size().height():
            self.workplace.fit_height(event.size().height())

    def closeEvent(self, event: QCloseEvent) -> None:
        self.settings.window_geometry = bytes(self.saveGeometry().data())
        if self.is_furnished:
            self._stillness.stop()
            self.jobs.close()
            self.close_document()
        event.accept()

    def _set_up(self, document: Document) -> None:
        from ultraplanner_gui.window.workplace import PLACES, Workplace

        switch = [self.table.by_name[name] for name in PLACES]
        place = Workplace(document, self.settings, self.ask, switch, self)
        self.workplace = place
        self._stack.addWidget(place)
        self._stack.setCurrentWidget(place)
        place.selection.changed.connect(self._enable)
        place.selection.changed.connect(self.sitting.moved)
        self.sitting.moved()
        document.changed.connect(self._on_document_changed)
        document.refused.connect(self._refuse)
        stack = document.undo_stack
        undo, redo = (
            stack.createUndoAction(self, self.tr("&Undo")),
            stack.createRedoAction(self, self.tr("&Redo")),
        )
        undo.setShortcut("Ctrl+Z")
        redo.setShortcuts([QKeySequence("Ctrl+Shift+Z"), QKeySequence("Ctrl+Y")])
        self._undo = [undo, redo]
        edit = self._menus["edit"]
        edit.insertActions(edit.actions()[0], self._undo)
        place.place_wanted.connect(self.go)
        place.ledger.table_wanted.connect(self.deeds.table_of)
        place.offer_actions(self.table.context)
        place.fit_height(self.height())
        self._title()
        self.go("sheet")

    def _take_down(self) -> None:
        place = self.workplace
        if place is None:
            return
        place.flush()
        self.workplace = None
        for action in self._undo:
            self._menus["edit"].removeAction(action)
            action.deleteLater()
        self._undo = []
        self._stack.removeWidget(place)
        place.deleteLater()
        self._enable()
        self._title()

    @Slot(object, object)
    def _on_document_changed(self, before: object, after: object) -> None:
        document = self.document
        if document is not None and document.project is not self._said_of:
            self._hush()
        if "_beside" in self.__dict__:
            self._beside.hide()  # what is tried now can be done
        self._enable()
        self._title()

    def _enable(self) -> None:
        from ultraplanner_gui.window.actions import Situation

        document = self.document
        has_course = document is not None and document.project.course is not None
        self.table.enable(
            Situation(
                document is not None,
                has_course,
                self.workplace.selection.kind if self.workplace is not None else "",
                self.workplace.buildup.deeds.chosen() if self.workplace is not None else None,
            )
        )
        for menu in self._lanes:
            menu.menuAction().setEnabled(document is not None)

    def _title(self) -> None:
        document = self.document
        self.setWindowTitle(
            f"{document.project.race.name} – Ultraplanner"
            if document is not None
            else "Ultraplanner"
        )

    def _fill_lanes(self) -> None:
        if self.workplace is not None:
            self.workplace.fill_lane_menus(*self._lanes)

    def _fill_recent(self) -> None:
        self._recent.clear()
        files = [p for p in self.settings.recent_files if p.exists()]
        for path in files:
            self._recent.addAction(
                path.stem, partial(self.deeds.open_project_file, path)
            ).setToolTip(str(path))
        if not files:
            self._recent.addAction(self.tr("none yet")).setEnabled(False)

    def _refresh_welcome(self) -> None:
        self._welcome.show_recent([p for p in self.settings.recent_files if p.exists()][:5])
        self._stack.setCurrentWidget(self._welcome)
