"""GPX files of an invented run, written as GPX 1.1 has them."""

from datetime import UTC, datetime, timedelta

START = datetime(2027, 3, 6, 8, 0, tzinfo=UTC)
STEP_DEG = 0.00027  # 30 m of latitude


def walk(points=400, start=START, every_s=10, stands_s=0, times=True, name="Along the dyke"):
    """A run due north at 3 m/s; it stands for *stands_s* seconds half way."""
    rows, clock = [], start
    for n in range(points):
        rows.append(_point(50.0 + n * STEP_DEG, clock if times else None))
        clock += timedelta(seconds=every_s)
        if n == points // 2:
            for _ in range(stands_s // every_s):
                rows.append(_point(50.0 + n * STEP_DEG, clock if times else None))
                clock += timedelta(seconds=every_s)
    head = '<gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1">'
    return f"{head}<trk><name>{name}</name><trkseg>{''.join(rows)}</trkseg></trk></gpx>"


def _point(latitude, clock):
    time = f"<time>{clock:%Y-%m-%dT%H:%M:%SZ}</time>" if clock else ""
    return f'<trkpt lat="{latitude:.6f}" lon="7.0"><ele>120</ele>{time}</trkpt>'
