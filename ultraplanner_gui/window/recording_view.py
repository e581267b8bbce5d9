"""One recording looked at: its slopes, the pace on them, how it slowed, where it stood."""

from __future__ import annotations

import math

import numpy as np
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ultraplanner_gui.desk.jobs import Token
from ultraplanner_gui.engine.recording_match import Covered, covered
from ultraplanner_gui.engine.run_analysis import RunAnalysis, SlopeClass, analysis_of
from ultraplanner_gui.plan.project import Project
from ultraplanner_gui.plan.recording import KeptRecording
from ultraplanner_gui.plan.runner import Runner
from ultraplanner_gui.plan.value import Value
from ultraplanner_gui.science.gradient_cost import pace_cost
from ultraplanner_gui.widgets.help_topic import set_topic
from ultraplanner_gui.widgets.rows import Figure, Heads, Row, Rows, Rule, Sentence, Title
from ultraplanner_gui.widgets.theme import theme
from ultraplanner_gui.widgets.tokens import Space
from ultraplanner_gui.window.small_charts import Bar, BarChart, DotChart, Scale, ticks_between
from ultraplanner_gui.wording.words import NONE, Words

TOPIC = "recordings"
_SIZE_PX = (940.0, 640.0)
_ROWS_PX = 330.0
_STEEPEST = 0.35
_MOST_DOTS = 1_500
_MOST_SPANS = 4


class Analysed(Value, frozen=True):
    """What a recording says of itself, and where it lies on the course, if there is one."""

    run: RunAnalysis
    course: Covered | None


def analysed(token: Token, kept: KeptRecording, project: Project) -> Analysed:
    """Return what *kept* says; CourseError if its file can no longer be read."""
    from ultraplanner_gui.exchange.kept_recording import pace_of, recording_of

    pace = pace_of(kept)
    token.progress(0.6)
    run = analysis_of(pace, project.runner)
    token.progress(0.7)
    course = project.course
    return Analysed(run, covered(course, recording_of(kept)) if course is not None else None)


class RecordingView(QDialog):
    """Charts at the left, the same in figures at the right."""

    def __init__(
        self,
        kept: KeptRecording,
        found: Analysed,
        runner: Runner,
        words: Words,
        of: str,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._found, self._course, self._words = found.run, found.course, words
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(kept.name or kept.file)
        set_topic(self, TOPIC)
        self.slopes = BarChart(self.tr("Way by gradient, in percent; mark: the time"), TOPIC, self)
        self.pace = DotChart(
            self.tr("Pace by gradient, {0}, up is slower; line: the model").format(words.pace_unit),
            TOPIC,
            self,
        )
        self.hours = BarChart(
            self.tr("Speed on equal effort by hour, first hour 100; mark: forecast"), TOPIC, self
        )
        self._show_slopes()
        self._show_pace(runner)
        self._show_hours()
        self.rows = Rows(self.tr("Figures of the recording"), self)
        self.rows.show_rows(tuple(self._rows(kept, of)))
        inside = QWidget(self)
        column = QVBoxLayout(inside)
        column.setContentsMargins(Space.NEAR, Space.TIGHT, Space.APART, Space.TIGHT)
        column.addWidget(self.rows)
        column.addStretch(1)
        scroll = QScrollArea(self)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidget(inside)
        scroll.setWidgetResizable(True)
        scroll.setFixedWidth(round(theme().px(_ROWS_PX)))
        charts = QVBoxLayout()
        charts.setSpacing(Space.NEAR)
        for chart in (self.slopes, self.pace, self.hours):
            charts.addWidget(chart, 1)
        row = QHBoxLayout()
        row.setSpacing(Space.APART)
        row.addLayout(charts, 1)
        row.addWidget(scroll)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        buttons.rejected.connect(self.reject)
        box = QVBoxLayout(self)
        box.setContentsMargins(Space.WIDE, Space.WIDE, Space.WIDE, Space.WIDE)
        box.addLayout(row, 1)
        box.addWidget(buttons)
        width, height = (round(theme().px(size)) for size in _SIZE_PX)
        self.resize(width, height)
        buttons.setFocus()

    def _show_slopes(self) -> None:
        found = self._found
        total = max(1.0, sum(s.distance_m for s in found.slopes))
        shares = [100.0 * s.distance_m / total for s in found.slopes]
        moving_s = max(1.0, sum(s.moving_s for s in found.slopes))
        times = [100.0 * s.moving_s / moving_s for s in found.slopes]
        bars = [
            Bar(self._class_name(s), share, time, _hue(s))
            for s, share, time in zip(found.slopes, shares, times, strict=True)
        ]
        high = max(10.0, 10.0 * math.ceil(max(*shares, *times) / 10.0))
        ticks = tuple((t, self._words.number(t)) for t in ticks_between(0.0, high, high / 2.0))
        self.slopes.show_bars(bars, Scale(0.0, high, ticks))

    def _show_pace(self, runner: Runner) -> None:
        found, words = self._found, self._words
        every = max(1, len(found.gradient) // _MOST_DOTS)
        grade, pace = found.gradient[::every], found.pace_s_per_m[::every]
        edges = np.linspace(-_STEEPEST, _STEEPEST, 71)
        model = found.level_s_per_m * pace_cost(edges, runner.uphill_share)
        high = float(np.nanmax([*np.quantile(pace, [0.98]), found.level_s_per_m * 2.0]))
        low = float(np.nanmin([*np.quantile(pace, [0.01]), found.level_s_per_m])) * 0.9
        across = Scale(
            -_STEEPEST,
            _STEEPEST,
            tuple((t, words.percent(100.0 * t)) for t in ticks_between(-0.3, 0.3, 0.1)),
        )
        ups = (low, found.level_s_per_m, high)
        up = Scale(low, high, tuple((value, words.pace(value)) for value in ups))
        dots = list(zip(grade.tolist(), pace.tolist(), strict=True))
        self.pace.show_dots(
            dots, list(zip(edges.tolist(), model.tolist(), strict=True)), across, up
        )

    def _show_hours(self) -> None:
        words = self._words
        bars = [
            Bar(words.number(h.number + 1), 100.0 * h.share, 100.0 * h.forecast)
            for h in self._found.hours
        ]
        high = max([110.0, *(bar.value for bar in bars)])
        ticks = tuple((t, words.number(t)) for t in (0.0, 50.0, 100.0))
        self.hours.show_bars(bars, Scale(0.0, high, ticks))

    def _class_name(self, slope: SlopeClass) -> str:
        words = self._words
        if math.isinf(slope.low):
            return self.tr("below {0}").format(words.percent(100.0 * slope.high))
        if math.isinf(slope.high):
            return self.tr("above {0}").format(words.percent(100.0 * slope.low))
        low, high = (words.number(100.0 * edge) for edge in (slope.low, slope.high))
        return self.tr("{0} to {1}").format(low, high)

    def _rows(self, kept: KeptRecording, of: str) -> list[Row]:
        found, words = self._found, self._words
        climb = f"{words.height_bare(found.climb_m)}, {words.height(found.drop_m)}"
        pace = words.pace_with_unit(found.moving_s / found.length_m)
        flat = words.pace_with_unit(found.flat_s_per_m)
        drift = NONE if math.isnan(found.drift) else words.percent(100.0 * found.drift, 1)
        rows: list[Row] = [
            Title(kept.name or kept.file, self.tr("Is of: {0}").format(of), "recording matched"),
            Figure(self.tr("Distance"), words.distance(found.length_m, 1), topic=TOPIC),
            Figure(self.tr("Climb, drop"), climb, topic="climb and drop"),
            Figure(self.tr("Moving"), words.duration(found.moving_s), topic=TOPIC),
            Figure(self.tr("Standing"), words.duration(found.standing_s), topic=TOPIC),
            Figure(self.tr("Stops"), words.number(len(found.stops_s)), topic=TOPIC),
            *self._longest_stop(),
            Figure(self.tr("Pace, moving"), pace, topic=TOPIC),
            Figure(self.tr("Flat-equivalent"), words.distance(found.flat_m, 1), topic=TOPIC),
            Figure(self.tr("Flat-equivalent pace"), flat, topic=TOPIC),
            Figure(self.tr("Second half slower by"), drift, topic=TOPIC),
            *self._course_rows(),
            Rule(),
            Heads(self.tr("Gradient, %"), self.tr("time"), self.tr("way"), topic=TOPIC),
            *self._share_rows(),
            Rule(),
            Heads(self.tr("Pace by gradient"), self.tr("model"), self.tr("pace"), topic=TOPIC),
        ]
        rows += [
            Figure(
                self._class_name(s),
                words.pace(s.pace_s_per_m),
                words.pace(s.model_s_per_m),
                shows_both=True,
                topic=TOPIC,
            )
            for s in found.slopes
            if s.distance_m > 0.0
        ]
        rows += [
            Rule(),
            Heads(self.tr("Hour"), self.tr("forecast"), self.tr("speed"), topic=TOPIC),
        ]
        rows += [
            Figure(
                words.number(h.number + 1),
                words.percent(100.0 * h.share),
                words.percent(100.0 * h.forecast),
                shows_both=True,
                topic=TOPIC,
            )
            for h in found.hours
        ]
        rows.append(
            Sentence(
                self.tr(
                    "Speed on equal effort: gradients taken out by the pace model. Heat, ground "
                    "and dark are still in it."
                )
            )
        )
        return rows

    def _share_rows(self) -> list[Row]:
        words = self._words
        return [
            Figure(
                self._class_name(s),
                words.distance(s.distance_m, 1),
                words.duration(s.moving_s),
                shows_both=True,
                topic=TOPIC,
            )
            for s in self._found.slopes
            if s.distance_m > 0.0
        ]

    def _longest_stop(self) -> list[Row]:
        if not self._found.stops_s:
            return []
        longest = self._words.duration(max(self._found.stops_s))
        return [Figure(self.tr("Longest stop"), longest, topic=TOPIC)]

    def _course_rows(self) -> list[Row]:
        """Return how much of the course was run, from where to where, and how much beside it."""
        found, words, topic = self._course, self._words, "recording matched"
        if found is None:
            return []
        rows: list[Row] = [Rule(), Heads(self.tr("On the course of the race"), topic=topic)]
        if not found.spans_m:
            return [*rows, Sentence(self.tr("This run was elsewhere."))]
        return [
            *rows,
            *(
                Figure(
                    self.tr("From, to"),
                    f"{words.distance_bare(start, 1)} – {words.distance(end, 1)}",
                    topic=topic,
                )
                for start, end in found.spans_m[:_MOST_SPANS]
            ),
            Figure(self.tr("Of the course"), words.percent(100.0 * found.share), topic=topic),
            Figure(
                self.tr("Of the run off the line"),
                words.percent(100.0 * found.off_share),
                topic=topic,
            ),
        ]


def _hue(slope: SlopeClass) -> str:
    middle = (max(slope.low, -1.0) + min(slope.high, 1.0)) / 2.0
    return "ochre" if middle > 0.02 else "sky" if middle < -0.02 else "stone"
